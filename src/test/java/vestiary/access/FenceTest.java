package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;

/** The database's own fence, looked at past Hibernate, as the role that the server works as. */
@QuarkusTest
class FenceTest {

  private static final String TENANTED =
      """
      select c.relname from pg_class c join pg_namespace n on n.oid = c.relnamespace
      where n.nspname = 'public' and c.relkind in ('r', 'p') and exists (
        select 1 from pg_attribute a where a.attrelid = c.oid and a.attname = 'cluster_id')
      order by 1
      """;

  /** SQLSTATE insufficient_privilege; PostgreSQL documentation, appendix A. */
  private static final String NOT_ALLOWED = "42501";

  /** SQLSTATE check_violation. */
  private static final String BROKEN_RULE = "23514";

  @Inject Scenario scenario;
  @Inject FullCluster full;
  @Inject AgroalDataSource pool;
  @Inject OwnerDatabase owner;

  private UUID other;

  @BeforeEach
  void the_other_cluster_is_full_and_ours_has_its_own_row_alone() {
    full.load();
    other = scenario.becomeAnother();
  }

  @Test
  void the_server_works_as_a_role_that_owns_nothing_and_gets_round_no_fence() throws SQLException {
    assertEquals(
        List.of("f"),
        ask(
            "select rolsuper or rolbypassrls or rolcreaterole from pg_roles where rolname = current_user"));
    assertEquals(
        List.of(),
        ask(
            """
            select c.relname from pg_class c join pg_roles r on r.oid = c.relowner
            where r.rolname = current_user
            """));
    assertRefused("select * from flyway_schema_history");
    assertRefused("alter table church disable row level security");
    assertRefused("truncate church cascade");
    assertRefused("delete from audit");
    assertRefused("update audit set visitor = ''");
  }

  @Test
  void every_table_with_a_cluster_has_the_fence() throws SQLException {
    List<String> unfenced =
        ask(
            """
            select relname from pg_class c
            where relnamespace = 'public'::regnamespace and relname in (%s) and not (relrowsecurity and exists (
              select 1 from pg_policy p where p.polrelid = c.oid and p.polname = 'own_cluster'))
            """
                .formatted(TENANTED.replace("order by 1", "")));

    assertEquals(List.of(), unfenced);
  }

  @Test
  void without_a_cluster_no_table_shows_a_row_though_every_one_has_some() throws SQLException {
    List<String> tables = ask(TENANTED);
    assertTrue(tables.size() > 20, tables.toString());
    for (String table : tables) {
      assertFalse(asOwner("select 1 from %s limit 1".formatted(table)).isEmpty(), table);
      assertEquals(List.of(), ask("select 1 from %s limit 1".formatted(table)), table);
      if (table.equals("audit")) {
        continue;
      }
      assertEquals(0, change("update %s set cluster_id = cluster_id".formatted(table)), table);
      assertEquals(0, change("delete from %s".formatted(table)), table);
    }
  }

  @Test
  void within_a_cluster_only_its_own_rows_are_there_and_can_be_written() throws SQLException {
    scenario.within(
        scenario.ours(),
        () -> {
          assertEquals(List.of("1"), asked("select count(*) from cluster"));
          assertEquals(List.of("0"), asked("select count(*) from church"));
          String foreign =
              "insert into parish (cluster_id, id, name) values ('%s', gen_random_uuid(), 'X')"
                  .formatted(other);
          SQLException refused = assertThrows(SQLException.class, () -> change(foreign));
          assertEquals(NOT_ALLOWED, refused.getSQLState());
        });
    scenario.within(other, () -> assertEquals(List.of("6"), asked("select count(*) from church")));
  }

  @Test
  void what_is_lent_is_seen_by_its_two_sides_alone_and_each_says_its_own_part()
      throws SQLException {
    UUID third = UUID.fromString(asOwner("select borrower_id from lending").get(0));
    String count = "select count(*) from lending";
    scenario.within(scenario.ours(), () -> assertEquals(List.of("0"), asked(count)));
    scenario.within(other, () -> assertEquals(List.of("1"), asked(count)));
    scenario.within(third, () -> assertEquals(List.of("1"), asked(count)));
    String asLender =
        """
        insert into lending (cluster_id, id, borrower_id, starts, ends, state, pieces, note,
                             answer, ending, offered_at, version)
        select cluster_id, gen_random_uuid(), borrower_id, starts, ends, state, pieces, note,
               answer, ending, offered_at, 0 from lending
        """;
    refusedIn(third, NOT_ALLOWED, asLender);
    refusedIn(third, BROKEN_RULE, "update lending set state = 'withdrawn'");
    refusedIn(third, BROKEN_RULE, "update lending set pieces = '[1]'");
    refusedIn(other, BROKEN_RULE, "update lending set state = 'accepted'");
    assertEquals(List.of("offered"), asOwner("select state from lending"));
  }

  @Test
  void a_leave_to_look_in_is_seen_by_both_clusters_and_given_by_one() throws SQLException {
    UUID third = UUID.fromString(asOwner("select home_id from oversight").get(0));
    String count = "select count(*) from oversight";
    scenario.within(scenario.ours(), () -> assertEquals(List.of("0"), asked(count)));
    scenario.within(third, () -> assertEquals(List.of("1"), asked(count)));
    String toOneself =
        """
        insert into oversight (cluster_id, id, home_id, overseer_id, granted_at)
        select cluster_id, gen_random_uuid(), home_id, gen_random_uuid(), now() from oversight
        """;
    refusedIn(third, NOT_ALLOWED, toOneself);
    assertEquals(List.of("1"), asOwner("select count(*) from oversight"));
  }

  private void refusedIn(UUID cluster, String state, String change) {
    scenario.within(
        cluster,
        () -> {
          SQLException refused = assertThrows(SQLException.class, () -> change(change), change);
          assertEquals(state, refused.getSQLState(), refused.getMessage());
        });
  }

  private List<String> asked(String query) {
    try {
      return ask(query);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private void assertRefused(String change) {
    SQLException refused = assertThrows(SQLException.class, () -> change(change), change);
    assertEquals(NOT_ALLOWED, refused.getSQLState(), refused.getMessage());
  }

  private int change(String change) throws SQLException {
    try (Connection connection = pool.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(change);
      return Math.max(0, statement.getUpdateCount());
    }
  }

  private List<String> ask(String query) throws SQLException {
    try (Connection connection = pool.getConnection()) {
      return ask(connection, query);
    }
  }

  private List<String> asOwner(String query) throws SQLException {
    try (Connection connection = owner.getConnection()) {
      return ask(connection, query);
    }
  }

  private static List<String> ask(Connection connection, String query) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      List<String> rows = new ArrayList<>();
      while (found.next()) {
        rows.add(found.getString(1));
      }
      return rows;
    }
  }
}
