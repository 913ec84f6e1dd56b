package vestiary.regrouping;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Asks the database and changes it, in the one transaction of a connection. */
record Questions(Connection connection) {

  /** One row of an answer. */
  interface Row<T> {
    T read(ResultSet found) throws SQLException;
  }

  <T> List<T> ask(String query, Row<T> row, Object... values) throws SQLException {
    try (PreparedStatement statement = prepared(query, values);
        ResultSet found = statement.executeQuery()) {
      List<T> rows = new ArrayList<>();
      while (found.next()) {
        rows.add(row.read(found));
      }
      return rows;
    }
  }

  List<String> texts(String query, Object... values) throws SQLException {
    return ask(query, found -> found.getString(1), values);
  }

  boolean isTrue(String question, Object... values) throws SQLException {
    return ask(question, found -> found.getBoolean(1), values).get(0);
  }

  /** How many rows were changed. */
  int change(String change, Object... values) throws SQLException {
    try (PreparedStatement statement = prepared(change, values)) {
      statement.execute();
      return Math.max(0, statement.getUpdateCount());
    }
  }

  /** A name of the database's own catalogue as it stands in a statement. */
  static String quoted(String name) {
    return '"' + name.replace("\"", "\"\"") + '"';
  }

  private PreparedStatement prepared(String sql, Object... values) throws SQLException {
    PreparedStatement statement = connection.prepareStatement(sql);
    try {
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
      return statement;
    } catch (SQLException e) {
      statement.close();
      throw e;
    }
  }
}
