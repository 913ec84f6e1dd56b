package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.exchange.BringingIn;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.users.LettingIn;

/**
 * A row of one cluster can never point into another, since the cluster is part of every key. What
 * tables and keys there are is asked of the database itself, so a new one is tested with the rest.
 */
@QuarkusTest
class SchemaTest {

  /** The queue of jobs is one for all clusters, and its rows name the cluster in their data. */
  private static final String TABLES =
      """
      select c.relname, c.oid::text from pg_class c join pg_namespace n on n.oid = c.relnamespace
      where n.nspname = 'public' and c.relkind in ('r', 'p')
        and c.relname not in ('flyway_schema_history', 'scheduled_tasks')
      """;

  private static final String WITHOUT_CLUSTER =
      """
      select t.relname from (%s) t where not exists (
        select 1 from pg_attribute a
        where a.attrelid = t.oid::oid and a.attname = 'cluster_id' and a.attnotnull)
      """
          .formatted(TABLES);

  private static final String WITHOUT_PRIMARY_KEY =
      """
      select t.relname from (%s) t where not exists (
        select 1 from pg_constraint k where k.conrelid = t.oid::oid and k.contype = 'p')
      """
          .formatted(TABLES);

  private static final String KEYS =
      """
      select t.relname || '.' || k.conname, string_agg(a.attname, ' ')
      from pg_constraint k join (%s) t on t.oid::oid = k.conrelid
      join pg_attribute a on a.attrelid = k.conrelid and a.attnum = any(k.conkey)
      where k.contype in ('p', 'u', 'f', 'x')
      group by t.relname, k.conname
      """
          .formatted(TABLES);

  private static final String UNIQUE_INDEXES_WITHOUT_CLUSTER =
      """
      select i.indexrelid::regclass::text from pg_index i join (%s) t on t.oid::oid = i.indrelid
      where i.indisunique and not exists (
        select 1 from pg_attribute a where a.attrelid = i.indrelid
        and a.attname = 'cluster_id' and a.attnum = any(i.indkey))
      """
          .formatted(TABLES);

  private static final String FOREIGN_KEYS_TO_ANY_CLUSTER =
      """
      select t.relname || '.' || k.conname
      from pg_constraint k join (%s) t on t.oid::oid = k.conrelid
      where k.contype = 'f' and not exists (
        select 1 from generate_subscripts(k.conkey, 1) i
        join pg_attribute a on a.attrelid = k.conrelid and a.attnum = k.conkey[i]
        join pg_attribute b on b.attrelid = k.confrelid and b.attnum = k.confkey[i]
        where a.attname = 'cluster_id' and b.attname = 'cluster_id')
      """
          .formatted(TABLES);

  /** Tables and the columns by which they point elsewhere than at the cluster itself. */
  private static final String POINTERS =
      """
      select t.relname, a.attname from pg_constraint k join (%s) t on t.oid::oid = k.conrelid
      join pg_attribute a on a.attrelid = k.conrelid and a.attnum = any(k.conkey)
      where k.contype = 'f' and a.attname <> 'cluster_id' order by 1, 2
      """
          .formatted(TABLES);

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject OwnerDatabase database;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
    letting.leaveTracesEverywhere(letting.user(Role.SACRISTAN, "ht"));
  }

  @Test
  void every_table_has_a_cluster_and_never_without_a_value() throws SQLException {
    assertTrue(ask(TABLES).size() >= 11);
    assertEquals(List.of(), names(WITHOUT_CLUSTER));
  }

  @Test
  void every_table_has_a_primary_key() throws SQLException {
    assertEquals(List.of(), names(WITHOUT_PRIMARY_KEY));
  }

  @Test
  void every_primary_unique_foreign_and_exclusion_key_includes_the_cluster() throws SQLException {
    List<String[]> keys = ask(KEYS);

    assertTrue(keys.size() > 30, "found only " + keys.size());
    for (String[] key : keys) {
      assertTrue(List.of(key[1].split(" ")).contains("cluster_id"), key[0] + " on " + key[1]);
    }
  }

  @Test
  void every_unique_index_includes_the_cluster() throws SQLException {
    assertEquals(List.of(), names(UNIQUE_INDEXES_WITHOUT_CLUSTER));
  }

  @Test
  void every_foreign_key_leads_to_a_row_of_the_same_cluster() throws SQLException {
    assertEquals(List.of(), names(FOREIGN_KEYS_TO_ANY_CLUSTER));
  }

  @Test
  void no_row_of_another_cluster_can_point_to_one_of_ours() throws SQLException {
    String other = scenario.openAnother().toString();

    for (String[] pointer : pointersInUse()) {
      String columns = columns(pointer[0]);
      String foreign =
          columns
              .replaceFirst("\\bcluster_id\\b", "'" + other + "'")
              .replaceFirst("\\bid\\b", "gen_random_uuid()");
      assertRefused(
          "insert into %s (%s) select %s from %s where %s is not null limit 1"
              .formatted(pointer[0], columns, foreign, pointer[0], pointer[1]));
    }
  }

  @Test
  void no_row_that_points_can_be_moved_to_another_cluster() throws SQLException {
    String other = scenario.openAnother().toString();

    for (String[] pointer : pointersInUse()) {
      assertRefused(
          "update %s set cluster_id = '%s' where id = (select id from %s where %s is not null limit 1)"
              .formatted(pointer[0], other, pointer[0], pointer[1]));
    }
  }

  private List<String[]> pointersInUse() throws SQLException {
    fillWhatOnlyReservationsFill();
    List<String[]> pointers = ask(POINTERS);
    assertFalse(pointers.isEmpty());
    for (String[] pointer : pointers) {
      assertFalse(
          ask("select 'x' from %s where %s is not null limit 1".formatted(pointer[0], pointer[1]))
              .isEmpty(),
          "no row of %s has %s".formatted(pointer[0], pointer[1]));
    }
    return pointers;
  }

  private void fillWhatOnlyReservationsFill() throws SQLException {
    BringingIn.leaveTraces();
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(
          """
          update occupation o set mass_id = (select id from mass limit 1),
                 church_id = (select id from church limit 1), standing = false
          """);
      statement.execute(
          """
          update sending set mass_id = (select id from mass limit 1),
                 carrier_id = (select id from person limit 1), signer_id = (select id from person limit 1),
                 church_id = (select id from church limit 1), whom = ''
          """);
      statement.execute(
          """
          update sent_piece set back_at = now(), back_id = (select id from church limit 1),
                 taker_id = (select id from person limit 1)
          """);
      statement.execute(
          """
          insert into mass_stamp (cluster_id, id, sequence, changed_at)
          select cluster_id, id, 1, now() from mass limit 1 on conflict do nothing
          """);
      statement.execute(
          """
          insert into office_sheet (cluster_id, id, vesting_place, parking, company, brought, wanted,
                                    note, version)
          select cluster_id, id, '', '', '', '', '', '', 0 from mass limit 1
          """);
      statement.execute(
          """
          update mass set usual_church_id = church_id, usual_starts = starts, cancelled = true,
                 taken_over_by = (select id from mass order by id limit 1)
          """);
      statement.execute(
          """
          update parish set merged_from = date '2099-12-07',
                 merged_into_id = (select id from parish order by id limit 1)
          where id <> (select id from parish order by id limit 1)
          """);
      statement.execute(
          """
          insert into merger (cluster_id, id, kind, church_id, parish_id, holds_from, pieces, note, noted_at)
          select c.cluster_id, gen_random_uuid(), 'closing', c.id, p.id, date '2099-12-07', 0, '', now()
          from church c, parish p limit 1
          """);
      statement.execute(
          """
          insert into sacristy_told (cluster_id, id, day, week)
          select cluster_id, id, date '2026-11-27', '{}' from church limit 1
          """);
      statement.execute(
          """
          insert into absence (cluster_id, id, person_id, starts, reason, version)
          select cluster_id, gen_random_uuid(), id, now(), '', 0 from person limit 1
          """);
      statement.execute(
          """
          insert into ministry (cluster_id, id, languages, days, wishes, own_set, granted_by, version)
          select cluster_id, id, '{}', '{}', '', '', '', 0 from person limit 1 on conflict do nothing
          """);
      statement.execute(
          """
          insert into person_church (cluster_id, id, person_id, church_id)
          select c.cluster_id, gen_random_uuid(), p.id, c.id from church c, person p limit 1
          on conflict do nothing
          """);
      statement.execute(
          """
          insert into child (cluster_id, id, whole_name, responsible, version)
          select cluster_id, id, 'Ida Fennimore', 'Her parents', 0 from person order by id desc limit 1
          on conflict do nothing
          """);
      statement.execute(
          """
          insert into arrival (cluster_id, id, mass_id, person_id, arrives, brings, version)
          select m.cluster_id, gen_random_uuid(), m.id, p.id, now(), 'own', 0 from mass m, person p limit 1
          """);
      statement.execute(
          """
          insert into serving (cluster_id, id, mass_id, person_id, role, version)
          select m.cluster_id, gen_random_uuid(), m.id, p.id, 'server', 0 from mass m, person p limit 1
          """);
      statement.execute(
          """
          insert into asked_celebrant (cluster_id, id, asked_id, named_id, version)
          select m.cluster_id, m.id, p.id, p.id, 0 from mass m, person p limit 1
          """);
      statement.execute(
          """
          insert into overdue_mail (cluster_id, id, sending_id, day)
          select cluster_id, gen_random_uuid(), id, date '2026-11-28' from sending limit 1
          """);
      statement.execute(
          """
          insert into movement (cluster_id, id, trip_id, piece_id, from_id, to_id, leave_by,
                                arrive_by, carrier, on_asking, done)
          select p.cluster_id, gen_random_uuid(), gen_random_uuid(), p.id, p.home_id, p.home_id,
                 now(), now(), '', false, false
          from piece p limit 1
          """);
      statement.execute(
          """
          insert into accepted_step (cluster_id, id, mass_id, role, ordinal, kind, church_id, colour,
                                     step, person, accepted_by, accepted_at)
          select cluster_id, gen_random_uuid(), id, 'concelebrant', 1, 'chasuble', church_id, 'white',
                 'stole-over-alb', '', '', now()
          from mass limit 1
          """);
      statement.execute(
          """
          insert into plan (cluster_id, id, first_date, last_date, status, failure, cancelled,
                            starts, requested_at, version)
          select p.cluster_id, gen_random_uuid(), '2026-12-07', '2026-12-13', 'proven', '', false, 1,
                 now(), 0
          from piece p limit 1
          """);
      statement.execute(
          "insert into plan_basis (cluster_id, id, facts) select cluster_id, id, '' from plan");
      statement.execute(
          """
          insert into shared_device (cluster_id, id, church_id, name, fingerprint, made_at, used_at,
                                     wrong_codes, version)
          select cluster_id, gen_random_uuid(), id, 'Phone', repeat('0', 64), now(), now(), 0, 0
          from church limit 1
          """);
      statement.execute(
          """
          insert into device_hand (cluster_id, id, church_id, person_id, fingerprint)
          select c.cluster_id, gen_random_uuid(), c.id, p.id, '' from church c, person p limit 1
          """);
      statement.execute(
          """
          insert into person_mail (cluster_id, id, address, kept_at, version)
          select cluster_id, id, 'a@home.example', now(), 0 from person
          where id not in (select id from child) limit 1
          """);
      statement.execute(
          """
          insert into asking (cluster_id, id, trip_id, from_id, to_id, leave_by, rider, riding,
                              pieces, person_id, state, asked_by, asked_at, changed_by, changed_at,
                              mail_failed, offered, version)
          select c.cluster_id, gen_random_uuid(), gen_random_uuid(), c.id, c.id, now(), '', false,
                 array['X'], m.id, 'declined', '', now(), '', now(), false, p.id, 0
          from church c, person_mail m, plan p limit 1
          """);
      statement.execute(
          """
          insert into photo (cluster_id, id, piece_id, occupation_id, width, height, added_at, version)
          select cluster_id, gen_random_uuid(), piece_id, id, 1, 1, now(), 0 from occupation limit 1
          """);
      statement.execute(
          """
          insert into photo_picture (cluster_id, id, photo_id, small, jpeg)
          select cluster_id, gen_random_uuid(), id, true, '' from photo
          """);
      statement.execute(
          """
          insert into piece_value (cluster_id, id, piece_id, amount, currency, basis, valued_at, visitor)
          select cluster_id, gen_random_uuid(), id, 1, 'USD', '', now(), '' from piece limit 1
          """);
      statement.execute(
          """
          insert into stocktake_line (cluster_id, id, stocktake_id, piece_id, place, expected, finding,
                                      note, settled, version)
          select s.cluster_id, gen_random_uuid(), s.id, p.id, '', true, '', '', '', 0
          from stocktake s, piece p limit 1
          """);
      statement.execute(
          """
          insert into consent (cluster_id, id, mass_id, piece_id, state, answered_by, answered_at,
                               version)
          select p.cluster_id, gen_random_uuid(), m.id, p.id, 'granted', '', now(), 0
          from piece p, mass m limit 1
          """);
      statement.execute(
          """
          insert into one_more (cluster_id, id, mass_id, role, own, pieces, held, steps, taken_at,
                                version)
          select cluster_id, gen_random_uuid(), id, 'deacon', true, '{}', '{}', '[]', now(), 0
          from mass limit 1
          """);
      statement.execute(
          """
          insert into worn (cluster_id, id, mass_id, piece_id, worn, instead_of, worn_at, version)
          select p.cluster_id, gen_random_uuid(), m.id, p.id, true, p.id, now(), 0
          from piece p, mass m limit 1
          """);
      statement.execute(
          """
          insert into person_height (cluster_id, id, centimetres, version)
          select cluster_id, id, 180, 0 from person limit 1
          """);
      fillReservations(statement);
    }
  }

  private static void fillReservations(Statement statement) throws SQLException {
    for (String thing :
        List.of(
            "null, (select id from piece limit 1)",
            "(select id from vestment_set limit 1), null")) {
      statement.execute(
          """
          insert into reservation (cluster_id, id, mass_id, church_id, set_id, piece_id, state,
                                   made_by, made_at, version)
          select m.cluster_id, gen_random_uuid(), m.id, m.church_id, %s, 'released', '', now(), 0
          from mass m limit 1
          """
              .formatted(thing));
      statement.execute(
          """
          insert into wish (cluster_id, id, mass_id, church_id, set_id, piece_id, keeper_id, state,
                            note, asked_by, asked_at, answer, answered_by, version)
          select m.cluster_id, gen_random_uuid(), m.id, m.church_id, %s, m.church_id, 'withdrawn',
                 '', '', now(), '', '', 0
          from mass m limit 1
          """
              .formatted(thing));
    }
    statement.execute(
        "update occupation set reservation_id = (select id from reservation limit 1)");
  }

  private void assertRefused(String change) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      SQLException refused =
          assertThrows(SQLException.class, () -> statement.execute(change), change);
      // 23503 foreign_key_violation; PostgreSQL documentation, appendix A.
      assertEquals("23503", refused.getSQLState(), refused.getMessage());
    }
  }

  private String columns(String table) throws SQLException {
    return ask("""
            select string_agg(column_name, ', ') from information_schema.columns
            where table_schema = 'public' and table_name = '%s' and is_generated = 'NEVER'
            """
            .formatted(table))
        .get(0)[0];
  }

  private List<String> names(String query) throws SQLException {
    return ask(query).stream().map(row -> row[0]).toList();
  }

  private List<String[]> ask(String query) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      List<String[]> rows = new ArrayList<>();
      int columns = found.getMetaData().getColumnCount();
      while (found.next()) {
        rows.add(new String[] {found.getString(1), columns > 1 ? found.getString(2) : ""});
      }
      return rows;
    }
  }
}
