package vestiary.regrouping;

import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.FullCluster;
import vestiary.exchange.ScenarioLists;
import vestiary.problem.Refused;
import vestiary.scenario.Browsing;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.schedule.UnfoldPatterns;

/** Two clusters of which each has a row of every table, or nearly, become one. */
@QuarkusTest
class MergeClustersTest {

  /** Of these the rows of the cluster that remains are there afterwards, and no other. */
  private static final Set<String> NOT_TAKEN_OVER =
      Set.of(
          "cluster",
          "retention",
          "telling",
          "oversight",
          "user_session",
          "user_link",
          "user_token",
          "user_device",
          "user_passkey",
          "passkey_challenge",
          "outside_sign_in",
          "shared_device",
          "device_hand",
          "failed_sign_in",
          "sent_form",
          "import_file",
          "import_change");

  /** Of these, one row is as good as two that say the same. */
  private static final Set<String> ONCE =
      Set.of("tidying", "week_told", "sacristy_change", "printed_label");

  /** What the merge itself writes beside them. */
  private static final Set<String> WRITTEN = Set.of("audit", "regrouping");

  /** What both clusters have, since both began with the same lists, called otherwise in one. */
  private static final List<String> ANOTHER_NAME =
      List.of(
          "update parish set name = 'East ' || name where cluster_id = '%s'",
          "update church set slug = 'e-' || slug where cluster_id = '%s'",
          "update person set slug = 'e-' || slug where cluster_id = '%s'",
          "update suit set name = 'East ' || name where cluster_id = '%s'",
          "update piece set code = 'E-' || code where cluster_id = '%s'",
          "update vestment_set set code = 'E-' || code where cluster_id = '%s'");

  /** Both keep the same diocese, and one calendar is enough. */
  private static final List<String> NO_PROPERS =
      List.of(
          "delete from proper_church where cluster_id = '%s'",
          "delete from proper where cluster_id = '%s'");

  private static final String LIKE_OURS =
      """
      update cluster e set calendar = r.calendar, epiphany = r.epiphany, ascension = r.ascension,
        corpus_christi = r.corpus_christi, time_zone = r.time_zone, unfolded_until = r.unfolded_until
      from cluster r where e.cluster_id = '%s' and r.cluster_id = '%s'
      """;

  @Inject Scenario scenario;
  @Inject FullCluster full;
  @Inject ScenarioLists lists;
  @Inject OwnerDatabase owner;
  @Inject MergeAtStart start;
  @Inject UnfoldPatterns unfold;

  private UUID ended;
  private UUID ours;

  @BeforeEach
  void one_cluster_is_full_and_ours_began_with_the_same_lists() {
    full.load();
    ended = scenario.becomeAnother();
    ours = scenario.ours();
    change(List.of(LIKE_OURS.formatted(ended, ours)));
    scenario.within(ours, lists::bringIn);
    Sending.post("/api/coverage/2026-W50/sign", Map.of()).then().statusCode(201);
    Browsing.press("/times/publish").leadsTo("/times?done=published");
    List.of(ended, ours)
        .forEach(id -> scenario.within(id, () -> unfold.exactlyUntil(LocalDate.of(2027, 6, 1))));
  }

  @Test
  void every_row_is_there_afterwards_as_it_was_but_for_what_is_named_and_its_history_is_read()
      throws SQLException {
    callTheirsOtherwise();
    AllRows theirs = AllRows.of(owner, ended);
    AllRows own = AllRows.of(owner, ours);
    theirs.byTable().forEach((table, rows) -> assertFalse(rows.isEmpty(), "no row of " + table));

    List<String> said = merge(false);

    AllRows now = AllRows.of(owner, ours);
    for (String table : theirs.byTable().keySet()) {
      assertEquals(List.of(), AllRows.of(owner, ended).of(table), table);
      compare(table, theirs.of(table), own.of(table), now.of(table));
    }
    assertTrue(said.get(said.size() - 1).startsWith("It is done. Both lie as they were in"));
    assertEquals(List.of(), namingTheEnded());
    Browsing.page("/history/vestments/E-HT-W1-C").says("entered");
    Browsing.page("/history?who=server")
        .says("Clusters merged or split", "merged", "Settings", "removed");
    RestAssured.get("/api/coverage?week=2026-W50")
        .then()
        .statusCode(200)
        .body("signed[0].turn", is(2));
    secondStartDoesNothing();
  }

  private void secondStartDoesNothing() {
    String after = scenario.rows();
    assertTrue(merge(false).toString().contains("was merged into"));
    assertEquals(after, scenario.rows());
  }

  @Test
  void what_both_have_is_named_all_of_it_and_neither_that_nor_a_trial_changes_anything() {
    String before = scenario.rows();

    Refused refused = assertThrows(Refused.class, () -> merge(false));

    String sentence = refused.refusal().detail();
    assertTrue(sentence.contains("a church with the short name "), sentence);
    assertTrue(sentence.contains(" ht; ol; "), sentence);
    assertTrue(sentence.contains("a piece HT-"), sentence);
    assertTrue(sentence.contains("somebody with the short name "), sentence);
    assertTrue(sentence.endsWith("Nothing was changed."), sentence);
    assertEquals(before, scenario.rows());

    callTheirsOtherwise();
    before = scenario.rows();
    List<String> said = merge(true);
    assertTrue(said.toString().contains("church 6"), said.toString());
    assertEquals("This was a trial: nothing was changed.", said.get(said.size() - 1));
    assertEquals(before, scenario.rows());
  }

  @Test
  void whoever_writes_meanwhile_is_waited_for_and_finds_no_cluster_to_write_into()
      throws Exception {
    callTheirsOtherwise();
    String parish =
        "insert into parish (cluster_id, id, name) values ('%s', gen_random_uuid(), '%s')";
    try (Connection other = owner.getConnection();
        Statement writing = other.createStatement()) {
      other.setAutoCommit(false);
      writing.execute(parish.formatted(ended, "Written before"));
      Thread merging = new Thread(() -> merge(false));
      merging.start();
      awaitWaiting(merging);
      other.commit();
      merging.join();

      assertTrue(AllRows.of(owner, ours).of("parish").toString().contains("Written before"));
      SQLException refused =
          assertThrows(
              SQLException.class, () -> writing.execute(parish.formatted(ended, "Too late")));
      assertTrue(refused.getMessage().contains("foreign key"), refused.getMessage());
    }
  }

  private void compare(String table, List<String> theirs, List<String> own, List<String> now) {
    if (NOT_TAKEN_OVER.contains(table)) {
      assertEquals(own, now, table);
    } else if (ONCE.contains(table)) {
      assertTrue(AllRows.both(theirs, own).containsAll(now) && now.containsAll(own), table);
    } else if (WRITTEN.contains(table)) {
      assertTrue(now.containsAll(AllRows.both(theirs, own)), table);
    } else {
      assertEquals(
          but(table, AllRows.both(theirs, own)), but(table, now), "not as it was: " + table);
    }
  }

  /** Turns are counted anew, and who lent and borrowed is now one. */
  private static List<String> but(String table, List<String> rows) {
    String aside =
        switch (table) {
          case "signed_week", "published_times" -> "\"turn\": \\d+";
          case "lending" -> "\"(borrower_id|ended_by)\": \"[0-9a-f-]+\"";
          default -> "$^";
        };
    return rows.stream().map(row -> row.replaceAll(aside, "")).sorted().toList();
  }

  /** Columns in which the id of the one that ended stands still, but for the records of it. */
  private List<String> namingTheEnded() throws SQLException {
    List<String> naming = new ArrayList<>();
    try (Connection connection = owner.getConnection()) {
      for (String column :
          AllRows.ask(
              connection,
              """
              select format('select %L from %I where %I = ', table_name || '.' || column_name, table_name, column_name)
              from information_schema.columns join information_schema.tables using (table_schema, table_name)
              where table_schema = 'public' and table_type = 'BASE TABLE' and data_type = 'uuid'
                and table_name || '.' || column_name not in ('regrouping.other', 'audit.row_id')
              """)) {
        naming.addAll(AllRows.ask(connection, column + "'" + ended + "'"));
      }
    }
    return naming;
  }

  private void callTheirsOtherwise() {
    change(ANOTHER_NAME.stream().map(sql -> sql.formatted(ended)).toList());
    change(NO_PROPERS.stream().map(sql -> sql.formatted(ours)).toList());
  }

  private void change(List<String> work) {
    try (Connection connection = owner.getConnection();
        Statement statement = connection.createStatement()) {
      for (String one : work) {
        statement.execute(one);
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private List<String> merge(boolean isTrial) {
    List<String> said = new ArrayList<>();
    scenario.asJob(() -> said.addAll(start.merge(ended + ":" + ours, isTrial)));
    return said;
  }

  private void awaitWaiting(Thread merging) throws SQLException {
    try (Connection connection = owner.getConnection()) {
      boolean waits = false;
      while (merging.isAlive() && !waits) {
        waits =
            !AllRows.ask(
                    connection,
                    "select pg_sleep(0.05) from pg_stat_activity where wait_event_type = 'Lock' and query like 'lock table%'")
                .isEmpty();
      }
      assertTrue(waits, "the merge did not wait for whoever writes");
    }
  }
}
