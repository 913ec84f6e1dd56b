package vestiary.reservation;

import io.restassured.RestAssured;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import vestiary.scenario.Browsing;

/** Asks for what another has, as the page does. */
public final class Wishing {

  private static final Pattern ID =
      Pattern.compile("/reservations/wishes/([0-9a-f-]{36})/withdrawal");

  private Wishing() {}

  /** Asks for a set; answers the id of the wish asked last. */
  public static String wish(String set, String mass) {
    Browsing.send("/reservations/wishes", Map.of("mass", List.of(mass), "set", List.of(set)))
        .leadsTo("/reservations/wishes");
    return last();
  }

  /** The id of the wish asked last. */
  static String last() {
    Matcher found = ID.matcher(RestAssured.get("/reservations/wishes").asString());
    String last = "";
    while (found.find()) {
      last = found.group(1);
    }
    return last;
  }
}
