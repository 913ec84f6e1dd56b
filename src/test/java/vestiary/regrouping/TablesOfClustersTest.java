package vestiary.regrouping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.scenario.OwnerDatabase;

/** What every table has to keep to, so that its rows can go from one cluster to another. */
@QuarkusTest
class TablesOfClustersTest {

  @Inject OwnerDatabase owner;

  @Test
  void every_table_goes_with_its_cluster_so_that_nobody_writes_into_one_that_ended()
      throws SQLException {
    assertEquals(
        List.of(),
        ask(
            """
            select c.relname from pg_class c join pg_attribute a on a.attrelid = c.oid
            where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p')
              and a.attname = 'cluster_id' and c.relname <> 'cluster' and not exists (
                select 1 from pg_constraint f where f.conrelid = c.oid and f.contype = 'f'
                  and a.attnum = any (f.conkey))
            """));
  }

  @Test
  void whatever_is_unique_is_unique_within_a_cluster() throws SQLException {
    assertEquals(
        List.of(),
        ask(
            """
            select x.relname from pg_index i
            join pg_class c on c.oid = i.indrelid join pg_class x on x.oid = i.indexrelid
            where c.relnamespace = 'public'::regnamespace and (i.indisunique or i.indisexclusion)
              and c.relname not in ('flyway_schema_history', 'scheduled_tasks')
              and pg_get_indexdef(i.indexrelid, 1, true) <> 'cluster_id'
            """));
  }

  private List<String> ask(String query) throws SQLException {
    try (Connection connection = owner.getConnection()) {
      return AllRows.ask(connection, query);
    }
  }
}
