package vestiary.scenario;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

/** Rows of every table, kept aside, so that the scenario is read through the importer only once. */
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

  private final OwnerDatabase database;

  Copy(OwnerDatabase database) {
    this.database = database;
  }

  boolean isTaken() {
    return ask("select 1 from information_schema.schemata where schema_name = 'copy'").size() == 1;
  }

  void take() {
    List<String> work = new ArrayList<>(List.of("create schema copy"));
    tables().forEach(t -> work.add("create table copy.%s as table %s".formatted(t[0], t[0])));
    run(work);
  }

  /**
   * Puts the rows back; foreign keys are not looked at meanwhile, since they held before. Few rows
   * are deleted sooner than many tables are truncated.
   */
  void restore() {
    List<String> work = new ArrayList<>(List.of("set local session_replication_role = replica"));
    tables()
        .forEach(
            t -> {
              work.add("delete from " + t[0]);
              work.add(
                  "insert into %s (%s) select %s from copy.%s".formatted(t[0], t[1], t[1], t[0]));
            });
    run(work);
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

  private List<String[]> tables() {
    return ask(COLUMNS);
  }

  private List<String[]> ask(String query) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
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

  private void run(List<String> work) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("begin; " + String.join("; ", work) + "; commit");
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
