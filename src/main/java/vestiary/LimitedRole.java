package vestiary;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The role that the server works as: it reads and writes rows, and cannot get round the fences
 * between clusters, which the tables' owner could. The owner makes it, and migrates.
 */
final class LimitedRole {

  /** Any number will do that nothing else on the database uses: "limited " in ASCII. */
  private static final long TURN = 0x6c696d6974656420L;

  private LimitedRole() {}

  /**
   * Makes the role if need be, and answers what Quarkus must be told.
   *
   * @param connection as the owner of the tables
   * @param login how the owner gets in
   * @return settings by name; empty if the owner may make no roles
   */
  static Optional<Map<String, String>> prepare(Connection connection, Login login)
      throws SQLException {
    try (Statement statement = connection.createStatement()) {
      String role = ask(statement, "select current_database()") + "_app";
      String key = key(login.password(), role);
      statement.execute("select pg_advisory_lock(%d)".formatted(TURN));
      try {
        if (!isTrue(
            statement,
            "select rolsuper or rolcreaterole from pg_roles where rolname = current_user")) {
          return Optional.empty();
        }
        boolean isThere =
            isTrue(
                statement,
                "select exists (select 1 from pg_roles where rolname = %s)"
                    .formatted(quoted(role, '\'')));
        statement.execute(
            "%s role %s login nocreatedb nocreaterole password %s"
                .formatted(isThere ? "alter" : "create", quoted(role, '"'), quoted(key, '\'')));
      } finally {
        statement.execute("select pg_advisory_unlock(%d)".formatted(TURN));
      }
      return Optional.of(
          Map.of(
              "quarkus.flyway.jdbc-url", login.url(),
              "quarkus.flyway.username", login.user(),
              "quarkus.flyway.password", login.password(),
              "quarkus.datasource.jdbc.url", login.url(),
              "quarkus.datasource.username", role,
              "quarkus.datasource.password", key,
              "vestiary.application-role", role));
    }
  }

  /** Follows from the owner's password, so that every copy of the server finds the same. */
  private static String key(String password, String role) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(("." + password).getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
      return HexFormat.of().formatHex(mac.doFinal(role.getBytes(StandardCharsets.UTF_8)));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String quoted(String text, char mark) {
    return mark + text.replace(String.valueOf(mark), "" + mark + mark) + mark;
  }

  private static boolean isTrue(Statement statement, String question) throws SQLException {
    return ask(statement, question).equals("t");
  }

  private static String ask(Statement statement, String question) throws SQLException {
    try (ResultSet answer = statement.executeQuery(question)) {
      answer.next();
      return answer.getString(1);
    }
  }
}
