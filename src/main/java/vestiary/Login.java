package vestiary;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/**
 * How somebody gets into a database.
 *
 * @param url names neither user nor password
 */
record Login(String url, String user, String password) {

  /**
   * What was named; user and password may also stand in the address, where the driver would take
   * them for everybody's who comes by it.
   */
  static Login of(String url, String user, String password) {
    int question = url.indexOf('?');
    if (question < 0) {
      return new Login(url, user, password);
    }
    String named = user;
    String key = password;
    List<String> others = new ArrayList<>();
    for (String part : url.substring(question + 1).split("&")) {
      if (part.startsWith("user=")) {
        named = part.substring("user=".length());
      } else if (part.startsWith("password=")) {
        key = part.substring("password=".length());
      } else if (!part.isEmpty()) {
        others.add(part);
      }
    }
    String bare = url.substring(0, question);
    return new Login(others.isEmpty() ? bare : bare + "?" + String.join("&", others), named, key);
  }

  Connection connect() throws SQLException {
    return DriverManager.getConnection(url, user, password);
  }

  /** Says no password. */
  @Override
  public String toString() {
    return user + " at " + url;
  }
}
