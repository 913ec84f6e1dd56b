package vestiary.reservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Many people who want the same vestments at the same moment. */
@QuarkusTest
class ManyAtOnceTest {

  private static final int PEOPLE = 32;

  /** Two standing rows of one piece whose ranges overlap, by PostgreSQL's own operator. */
  private static final String OVERLAPS =
      """
      select count(*)::text from occupation a join occupation b
        on a.cluster_id = b.cluster_id and a.piece_id = b.piece_id and a.id < b.id
        and tstzrange(a.starts, a.ends) && tstzrange(b.starts, b.ends)
      where a.standing and b.standing
      """;

  /** Two that follow each other in different churches with less time between than the way takes. */
  private static final String UNBRIDGED =
      """
      select count(*)::text from occupation a join occupation b
        on a.piece_id = b.piece_id and a.ends <= b.starts and a.church_id <> b.church_id
      join journey j on (j.from_id, j.to_id) = (a.church_id, b.church_id)
      where a.standing and b.standing and a.ends + j.minutes * interval '1 minute' > b.starts
      """;

  /**
   * Reservations that stand and hold not all the pieces of their set, and rows of none that does.
   */
  private static final String HALF =
      """
      select r.id::text from reservation r
      where r.state = 'held' and (
        select count(*) from piece p
        where p.set_id = r.set_id and not exists (
          select 1 from occupation o where o.reservation_id = r.id and o.piece_id = p.id and o.standing)) > 0
      union all
      select o.id::text from occupation o left join reservation r on r.id = o.reservation_id
      where o.state = 'held' and o.standing and (r.state is null or r.state <> 'held')
      """;

  @Inject Scenario scenario;
  @Inject OwnerDatabase database;

  private ExecutorService people;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
    people = Executors.newFixedThreadPool(PEOPLE);
  }

  @Test
  void of_all_who_want_one_set_for_one_hour_one_has_it_and_each_other_is_told_by_whom()
      throws Exception {
    List<String> masses = new ArrayList<>();
    for (int at = 0; at < PEOPLE; at++) {
      masses.add(Reserving.mass(List.of("ht", "sa", "sj", "ol").get(at % 4), "2026-12-09T15:00"));
    }

    List<Response> answers =
        together(
            masses.stream()
                .map(m -> (Callable<Response>) () -> Reserving.set("HT-W1", m))
                .toList());

    assertEquals(1, answers.stream().filter(a -> a.statusCode() == 201).count());
    answers.stream().filter(a -> a.statusCode() != 201).forEach(ManyAtOnceTest::isToldByWhom);
    assertEquals(List.of("0"), Reserving.ask(database, OVERLAPS));
    assertEquals(List.of(), Reserving.ask(database, HALF));
  }

  @Test
  void random_wishes_for_overlapping_times_leave_no_piece_in_two_places() throws Exception {
    Random random = new Random(20261209);
    List<String> masses = new ArrayList<>();
    for (int at = 0; at < 24; at++) {
      String church = List.of("ht", "sa", "sj", "ol", "sm").get(random.nextInt(5));
      masses.add(
          Reserving.mass(
              church,
              "2026-12-09T%02d:%02d".formatted(9 + random.nextInt(9), 5 * random.nextInt(12))));
    }
    List<String> sets =
        List.of(
            "HT-W1", "HT-W2", "HT-W3", "SA-W1", "SA-W2", "SJ-W1", "SJ-W2", "OL-W1", "OL-W2",
            "SM-W1");
    List<Callable<Response>> wishes = new ArrayList<>();
    for (int at = 0; at < 160; at++) {
      String set = sets.get(random.nextInt(sets.size()));
      String mass = masses.get(random.nextInt(masses.size()));
      boolean gives = random.nextInt(4) == 0;
      wishes.add(() -> gives ? reservedAndGivenUp(set, mass) : Reserving.set(set, mass));
    }

    List<Response> answers = together(wishes);

    assertTrue(answers.stream().anyMatch(a -> a.statusCode() == 201));
    answers.stream().filter(a -> a.statusCode() != 201).forEach(ManyAtOnceTest::isReadable);
    assertEquals(List.of("0"), Reserving.ask(database, OVERLAPS));
    assertEquals(List.of("0"), Reserving.ask(database, UNBRIDGED));
    assertEquals(List.of(), Reserving.ask(database, HALF));
    assertFalse(Reserving.ask(database, "select 1 from occupation where state = 'held'").isEmpty());
  }

  @Test
  void several_at_once_in_any_order_go_whole_or_not_at_all_and_nobody_waits_for_ever()
      throws Exception {
    List<String> masses =
        IntStream.range(0, PEOPLE)
            .mapToObj(at -> Reserving.mass("ht", "2026-12-09T15:00"))
            .toList();
    List<String> sets = new ArrayList<>(List.of("HT-W1", "HT-W2", "HT-W3", "SA-W1", "SA-W2"));
    Random random = new Random(7);
    List<Callable<Response>> wishes = new ArrayList<>();
    for (String mass : masses) {
      Collections.shuffle(sets, random);
      List<String> three = List.copyOf(sets.subList(0, 3));
      wishes.add(() -> SeveralSets.held(three, mass));
    }

    List<Response> answers = together(wishes);

    assertEquals(1, answers.stream().filter(a -> a.statusCode() == 303).count());
    answers.stream()
        .filter(a -> a.statusCode() != 303)
        .forEach(
            a -> {
              assertEquals(409, a.statusCode());
              assertTrue(a.asString().contains(" is held by the administrator for Mass at "));
            });
    assertEquals(List.of("3"), Reserving.ask(database, "select count(*)::text from reservation"));
    assertEquals(List.of(), Reserving.ask(database, HALF));
  }

  private static Response reservedAndGivenUp(String set, String mass) {
    Response answer = Reserving.set(set, mass);
    if (answer.statusCode() == 201) {
      Sending.delete("/api/reservations/" + answer.path("id")).then().statusCode(204);
    }
    return answer;
  }

  private List<Response> together(List<Callable<Response>> wishes) throws Exception {
    CountDownLatch start = new CountDownLatch(1);
    List<Future<Response>> coming = new ArrayList<>();
    for (Callable<Response> wish : wishes) {
      coming.add(
          people.submit(
              () -> {
                start.await();
                return wish.call();
              }));
    }
    start.countDown();
    List<Response> answers = new ArrayList<>();
    for (Future<Response> one : coming) {
      answers.add(one.get());
    }
    people.shutdown();
    return answers;
  }

  private static void isToldByWhom(Response answer) {
    isReadable(answer);
    assertEquals("the administrator", answer.path("by"));
    String detail = answer.path("detail");
    assertTrue(detail.contains("HT-W1 is held by the administrator for Mass at "), detail);
    assertTrue(detail.contains("Free instead: "), detail);
  }

  private static void isReadable(Response answer) {
    assertEquals(409, answer.statusCode(), answer.asString());
    Set<Object> members = answer.jsonPath().getMap("").keySet();
    assertTrue(members.containsAll(Set.of("type", "title", "detail")), answer.asString());
  }
}
