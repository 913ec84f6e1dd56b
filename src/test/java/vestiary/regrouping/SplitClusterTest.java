package vestiary.regrouping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import vestiary.access.FullCluster;
import vestiary.cluster.ReadCluster;
import vestiary.pool.ReadPool;
import vestiary.problem.Refused;
import vestiary.scenario.Browsing;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** One cluster becomes two, each with all of the history. */
@QuarkusTest
class SplitClusterTest {

  /** What no backup holds, doors, and lendings, which the borrower would see twice. */
  private static final Set<String> NOT_COPIED =
      Set.of(
          "user_session",
          "user_link",
          "user_token",
          "user_device",
          "user_passkey",
          "user_outside",
          "passkey_challenge",
          "outside_sign_in",
          "shared_device",
          "device_hand",
          "failed_sign_in",
          "sent_form",
          "import_file",
          "import_change",
          "letter",
          "oversight",
          "lending");

  @Inject Scenario scenario;
  @Inject FullCluster full;
  @Inject OwnerDatabase owner;
  @Inject CopyCluster copy;
  @Inject SplitAtStart start;
  @Inject ReadCluster cluster;
  @Inject ReadPool pool;
  @Inject Clock clock;

  @Test
  void the_second_begins_with_every_row_but_doors_and_lendings() throws SQLException {
    full.load();
    Side ours = side(scenario.ours());
    Refused lent = assertThrows(Refused.class, () -> copy.copy(ours, "river", Path.of("hill.zip")));
    assertTrue(lent.refusal().detail().contains("has lent vestments"), lent.refusal().detail());
    change("delete from lending");
    AllRows before = AllRows.of(owner, ours.id());

    Side made = copy.copy(ours, "river", Path.of("hill.zip"));

    AllRows theirs = AllRows.of(owner, made.id());
    for (String table : before.byTable().keySet()) {
      assertEquals(before.of(table), AllRows.of(owner, ours.id()).of(table), table);
      if (NOT_COPIED.contains(table)) {
        assertEquals(List.of(), theirs.of(table), table);
      } else if (Set.of("audit", "regrouping").contains(table)) {
        assertEquals(before.of(table).size() + 1, theirs.of(table).size(), table);
        assertTrue(theirs.of(table).containsAll(before.of(table)), table);
      } else {
        assertEquals(but(before.of(table)), but(theirs.of(table)), table);
      }
    }
    assertTrue(theirs.of("app_user").stream().allMatch(row -> row.contains("\"password\": \"\"")));
  }

  @Test
  void each_keeps_its_own_churches_and_the_past_of_all() {
    scenario.load();
    UUID ours = scenario.ours();
    Refused out = assertThrows(Refused.class, () -> split(false));
    assertTrue(out.refusal().detail().contains("OL-D1 is out"), out.refusal().detail());
    Sending.post("/api/pieces/OL-D1/back", Map.of()).then().statusCode(200);
    String before = scenario.rows();
    assertEquals("This was a trial: nothing was changed.", split(true).get(1));
    assertEquals(before, scenario.rows());

    assertTrue(split(false).toString().contains("/welcome/"));

    UUID made = side("river").id();
    assertEquals(Set.of("ol", "pp"), homes(made));
    assertEquals(Set.of("ht", "sa", "sj", "sm"), homes(ours));
    // Nobody is written that a Mass is cancelled: it is celebrated in the other.
    assertEquals(List.of(), AllRows.of(owner, ours).of("mass_change"));
    assertEquals(List.of(), AllRows.of(owner, made).of("mass_change"));
    assertTrue(
        AllRows.of(owner, made).of("audit").containsAll(entered(AllRows.of(owner, ours))),
        "what was entered before is in the history of both");
    Browsing.page("/history?who=server").says("Clusters merged or split", "split off");
    Browsing.page("/churches/ol/closing").says("river");
    String after = scenario.rows();
    assertTrue(split(false).toString().contains("before"));
    assertEquals(after, scenario.rows());
  }

  @Test
  void churches_that_are_not_there_are_refused_and_nothing_is_changed() {
    scenario.load();
    String before = scenario.rows();

    for (String named : List.of(":river:xx", ":river:", ":river:ht,ol,pp,sa,sj,sm", ":River:ol")) {
      assertThrows(
          Refused.class, () -> scenario.asJob(() -> start.split(scenario.ours() + named, false)));
    }

    assertEquals(before, scenario.rows());
  }

  /** Names and words differ, and nobody has a password. */
  private static List<String> but(List<String> rows) {
    return rows.stream()
        .map(row -> row.replaceAll("\"(password|word|name|created_at)\": \"[^\"]*\"", ""))
        .sorted()
        .toList();
  }

  private static List<String> entered(AllRows rows) {
    return rows.of("audit").stream().filter(row -> row.contains("\"kind\": \"parish\"")).toList();
  }

  private Set<String> homes(UUID of) {
    Set<String> homes = new TreeSet<>();
    scenario.within(
        of,
        () ->
            homes.addAll(
                pool.pieces(clock.instant()).stream()
                    .map(piece -> piece.home())
                    .distinct()
                    .flatMap(home -> cluster.churches().stream().filter(c -> c.id().equals(home)))
                    .map(church -> church.slug())
                    .collect(Collectors.toSet())));
    return homes;
  }

  private List<String> split(boolean isTrial) {
    List<String> said = new ArrayList<>();
    scenario.asJob(() -> said.addAll(start.split(scenario.ours() + ":river:ol,pp", isTrial)));
    return said;
  }

  private Side side(Object named) {
    try (Connection connection = owner.getConnection()) {
      return Side.find(new Questions(connection), named.toString()).orElseThrow();
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private void change(String sql) throws SQLException {
    try (Connection connection = owner.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
