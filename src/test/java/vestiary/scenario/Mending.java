package vestiary.scenario;

import static io.restassured.RestAssured.given;

import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Reads and presses remedies as a program would. */
public final class Mending {

  private Mending() {}

  /** The only clash of a day about that kind of piece that is not merely worth knowing. */
  public static Map<String, Object> clash(String date, String pieceKind) {
    return Asking.only(
        Asking.clashes(date, date).stream()
            .filter(one -> pieceKind.equals(one.get("pieceKind")))
            .toList());
  }

  /** Whether a clash of that id stands on its day. */
  public static boolean stands(Object id) {
    String date = id.toString().substring(0, 10);
    return Asking.clashes(date, date).stream().anyMatch(one -> one.get("id").equals(id));
  }

  /** What mends a clash. */
  @SuppressWarnings("unchecked")
  public static List<Map<String, Object>> remedies(Map<String, Object> clash) {
    return (List<Map<String, Object>>) clash.get("remedies");
  }

  /** The first remedy that changes something of that kind. */
  public static Map<String, Object> remedy(Map<String, Object> clash, String kind) {
    return remedies(clash).stream()
        .filter(changes(kind))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + kind + " among " + remedies(clash)));
  }

  @SuppressWarnings("unchecked")
  private static Predicate<Map<String, Object>> changes(String kind) {
    return remedy ->
        ((List<Map<String, Object>>) remedy.get("changes")).get(0).get("kind").equals(kind);
  }

  /** Where a remedy is applied and undone. */
  public static String address(Map<String, Object> clash, Object place) {
    return "/api/clashes/%s/remedies/%s".formatted(clash.get("id"), place);
  }

  /** Presses without saying anything. */
  public static Response press(Map<String, Object> clash, Object place) {
    return given().post(address(clash, place));
  }

  /** Applies a remedy that was read. */
  public static void apply(Map<String, Object> clash, Map<String, Object> remedy) {
    Sending.post(address(clash, remedy.get("n")), Map.of("fingerprint", remedy.get("fingerprint")))
        .then()
        .statusCode(200);
  }
}
