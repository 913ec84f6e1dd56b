package vestiary.proper;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.proper.ProperResourceTest.enter;
import static vestiary.proper.ProperResourceTest.kept;
import static vestiary.scenario.Browsing.page;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** One date, two churches of one cluster, two celebrations: on the pages and in the Masses. */
@QuarkusTest
class OwnDaysInTheWeekTest {

  private static final String THURSDAY = "2026-12-10";

  @Inject Scenario scenario;
  @Inject SessionFactory sessions;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_patron_of_one_town_is_red_there_and_violet_elsewhere() {
    enter(weir("patron-of-the-place", List.of("sm")));

    // UNLY 59 I.4 a before II.9 and III.13: the solemnity is kept on a weekday of Advent.
    kept("sm", THURSDAY)
        .body("[0].celebrations[0].id", equalTo("saint-weir"))
        .body("[0].celebrations[0].colours", equalTo(List.of("red")));
    kept("ht", THURSDAY).body("[0].celebrations[0].colours", equalTo(List.of("violet")));
    assertEquals(1, count("Saint Weir", page("/week/2026-12-07").html()));
    page("/day/" + THURSDAY)
        .says("Where a church keeps its own day Saint Martin: Solemnity: Saint Weir, red.");
  }

  @Test
  void a_mass_there_takes_the_colour_of_the_patron() {
    enter(weir("patron-of-the-place", List.of("sm")));

    Map<String, Object> there = Asking.mass("sm", THURSDAY + "T18:00");
    Map<String, Object> elsewhere = Asking.mass("ht", THURSDAY + "T08:00");

    assertEquals("red", there.get("colour"));
    assertEquals("violet", elsewhere.get("colour"));
  }

  @Test
  void a_feast_of_the_diocese_is_the_day_of_all_and_no_churchs_own() {
    enter(weir("feast-of-the-diocese", List.of()));

    kept("ht", THURSDAY).body("[0].celebrations[0].id", equalTo("saint-weir"));
    assertEquals(1, count("Saint Weir", page("/week/2026-12-07").html()));
    page("/day/" + THURSDAY)
        .isHeaded("Feast: Saint Weir")
        .keepsSilentOn("Where a church keeps its own day");
  }

  @Test
  void a_day_that_is_removed_gives_the_weekday_back_to_mass_and_page() {
    enter(weir("feast-of-the-diocese", List.of()));
    Sending.delete("/api/propers/saint-weir").then().statusCode(204);

    assertEquals("violet", Asking.mass("ht", THURSDAY + "T08:00").get("colour"));
    page("/week/2026-12-07").keepsSilentOn("Saint Weir");
  }

  @Test
  void a_page_reads_the_propers_once_however_many_churches_it_shows() {
    enter(weir("patron-of-the-place", List.of("sm", "pp")));
    Statistics statistics = sessions.getStatistics();
    statistics.setStatisticsEnabled(true);
    statistics.clear();

    page("/week/2026-12-07");

    statistics.setStatisticsEnabled(false);
    long read =
        Stream.of(statistics.getQueries())
            .filter(query -> query.contains("Proper"))
            .mapToLong(query -> statistics.getQueryStatistics(query).getExecutionCount())
            .sum();
    assertEquals(1, read);
  }

  private static Map<String, Object> weir(String place, List<String> churches) {
    Map<String, Object> body = new HashMap<>();
    body.put("name", "Saint Weir");
    body.put("month", 12);
    body.put("day", 10);
    body.put("colour", "red");
    body.put("place", place);
    body.put("churches", churches);
    return body;
  }

  private static long count(String words, String html) {
    return Pattern.compile(Pattern.quote(words)).matcher(html).results().count();
  }
}
