package vestiary.scenario;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Rows of every table, kept aside, so that what tests begin with is made only once. A copy is put
 * back many thousand times in a run: the database itself looks which tables were touched since, by
 * the transaction that wrote their rows, and writes no other.
 */
@ApplicationScoped
class Copy {

  private static final String COLUMNS =
      """
      select table_name, string_agg(quote_ident(column_name), ', ')
      from information_schema.columns join information_schema.tables using (table_schema, table_name)
      where table_schema = 'public' and table_type = 'BASE TABLE' and is_generated = 'NEVER'
        and table_name not in ('flyway_schema_history', 'scheduled_tasks')
      group by table_name
      """;

  private static final String COPIES =
      """
      create schema copies;
      -- What each table holds since it was last put back, and by which transaction.
      create table copies.put_back (
        table_name text primary key, columns text not null, copy text, count bigint, writer xid);
      create function copies.put_back(copy_name text) returns void language plpgsql as $$
      declare
        t copies.put_back;
        untouched boolean;
        written bigint;
      begin
        -- Foreign keys held when the copy was taken.
        set local session_replication_role = replica;
        for t in select * from copies.put_back loop
          execute format(
              'select count(*) = $1 and count(*) filter (where xmin = $2) = $1 from public.%I',
              t.table_name) into untouched using t.count, t.writer;
          if t.copy is distinct from copy_name or untouched is not true then
            execute format('delete from public.%I', t.table_name);
            execute format('insert into public.%I (%s) select %s from %I.%I',
                t.table_name, t.columns, t.columns, copy_name, t.table_name);
            get diagnostics written = row_count;
            update copies.put_back set copy = copy_name, count = written,
                writer = pg_current_xact_id()::xid where table_name = t.table_name;
          end if;
        end loop;
      end $$;
      """;

  private final OwnerDatabase database;

  private List<String[]> tables = List.of();
  private Connection kept;

  Copy(OwnerDatabase database) {
    this.database = database;
  }

  boolean isTaken(String name) {
    return !ask("select 1 from pg_namespace where nspname = '%s'".formatted(name)).isEmpty();
  }

  void take(String name) {
    List<String> work = new ArrayList<>(List.of("create schema " + name));
    tables().forEach(t -> work.add("create table %s.%s as table %s".formatted(name, t[0], t[0])));
    if (!isTaken("copies")) {
      work.add(COPIES);
      work.add("insert into copies.put_back (table_name, columns) " + COLUMNS);
    }
    run(work);
  }

  /** Puts the rows back. Few rows are deleted sooner than many tables are truncated. */
  void restore(String name) {
    run(List.of("select copies.put_back('%s')".formatted(name)));
  }

  /** Hands every row of one cluster over to another, as no request ever could. */
  void move(UUID from, UUID to) {
    List<String> work = new ArrayList<>(List.of("set local session_replication_role = replica"));
    tables().stream()
        .filter(t -> !t[0].equals("cluster"))
        .forEach(
            t ->
                work.add(
                    "update %s set cluster_id = '%s' where cluster_id = '%s'"
                        .formatted(t[0], to, from)));
    work.add("update cluster set name = 'Ours' where cluster_id = '%s'".formatted(from));
    run(work);
  }

  void forgetAllRows() {
    run(List.of("truncate cluster cascade"));
  }

  /** All rows of all tables as one text: equal texts, equal rows. */
  String rows() {
    // One question for all, since a connection for each table would be most of a test's time.
    String all =
        tables().stream()
            .map(
                t ->
                    "(select md5(coalesce(string_agg(t::text, '|' order by t::text), '')) from %s t)"
                        .formatted(t[0]))
            .collect(Collectors.joining(" || ' ' || ", "select ", ""));
    return ask(all).get(0)[0];
  }

  private synchronized List<String[]> tables() {
    if (tables.isEmpty()) {
      tables = ask(COLUMNS);
    }
    return tables;
  }

  private synchronized List<String[]> ask(String query) {
    // Prepared, so that the plan for all tables is made once and not for each comparison.
    try (PreparedStatement statement = connection().prepareStatement(query);
        ResultSet found = statement.executeQuery()) {
      List<String[]> rows = new ArrayList<>();
      int columns = found.getMetaData().getColumnCount();
      while (found.next()) {
        rows.add(new String[] {found.getString(1), columns > 1 ? found.getString(2) : ""});
      }
      return rows;
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private synchronized void run(List<String> work) {
    try {
      Connection connection = connection();
      connection.setAutoCommit(false);
      try (Statement statement = connection.createStatement()) {
        statement.execute(String.join("; ", work));
        connection.commit();
      } finally {
        connection.rollback();
        connection.setAutoCommit(true);
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  /** One for the whole run, since a new one looks up every table anew. */
  private Connection connection() throws SQLException {
    if (kept == null || !kept.isValid(1)) {
      kept = database.getConnection();
    }
    return kept;
  }

  @PreDestroy
  synchronized void close() throws SQLException {
    if (kept != null) {
      kept.close();
    }
  }
}
