package vestiary.reservation;

import io.restassured.response.Response;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Sending;

/** Sets things aside as a program would, and looks in the database what came of it. */
final class Reserving {

  private Reserving() {}

  static Response set(String code, String mass) {
    return Sending.post("/api/reservations", Map.of("set", code, "mass", mass));
  }

  static Response piece(String code, String mass) {
    return Sending.post("/api/reservations", Map.of("piece", code, "mass", mass));
  }

  /** Sets it aside; answers the id of the reservation. */
  static String held(String code, String mass) {
    return set(code, mass).then().statusCode(201).extract().path("id");
  }

  /** Enters a Mass with nothing chosen but church and start; answers its id. */
  static String mass(String church, String start) {
    return Sending.mass(church, start).get("id").toString();
  }

  /** The first column of what a query finds. */
  static List<String> ask(OwnerDatabase database, String query) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      List<String> texts = new ArrayList<>();
      while (found.next()) {
        texts.add(found.getString(1));
      }
      return texts;
    }
  }
}
