package vestiary.scenario;

import static io.restassured.RestAssured.given;

import io.restassured.specification.RequestSpecification;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Opens pages and sends forms as a browser would, without being led on to another page. */
public final class Browsing {

  private static final String ACCEPT =
      "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";

  private Browsing() {}

  /** Opens an address of this server. */
  public static Page open(String address) {
    return new Page(browser().get(address));
  }

  /** Opens a page that is there. */
  public static Page page(String address) {
    return open(address).is(200);
  }

  /** Sends a form that is filled in so; what is empty is sent too. */
  public static Page send(String action, Map<String, List<String>> filled) {
    RequestSpecification request =
        browser().contentType("application/x-www-form-urlencoded; charset=UTF-8");
    filled.forEach((name, values) -> request.formParam(name, values));
    return new Page(request.post(action));
  }

  /** Presses a button that stands alone in its form. */
  public static Page press(String action) {
    return send(action, Map.of());
  }

  /** Sends a list from the page for lists. */
  public static Page upload(String what, String dryRun, byte[] file) {
    Page sent = sendList(what, file);
    return sent.status() == 303 ? goOn(sent.wayOn(), Map.of("dryRun", dryRun)) : sent;
  }

  /** Sends a list and no more. */
  public static Page sendList(String what, byte[] file) {
    return new Page(
        browser()
            .multiPart("what", what)
            .multiPart("file", "list.csv", file, "text/csv")
            .post("/import"));
  }

  /** Presses a button under a list as it is guessed, but for what is typed; the page after it. */
  public static Page goOn(String address, Map<String, String> typed) {
    Map<String, List<String>> form = new LinkedHashMap<>(page(address).form(address));
    typed.forEach((field, value) -> form.put(field, List.of(value)));
    Page answer = send(address, form);
    return answer.status() == 303 ? page(answer.wayOn()) : answer;
  }

  /** Sends a form with a file in it; an empty one where none is chosen. */
  public static Page sendWithFile(
      String action, Map<String, List<String>> filled, String field, byte[] file) {
    RequestSpecification request = browser();
    filled.forEach(
        (name, values) -> {
          if (!name.equals(field)) {
            values.forEach(value -> request.multiPart(name, value));
          }
        });
    String name = file.length == 0 ? "" : "picture.jpg";
    return new Page(request.multiPart(field, name, file, "image/jpeg").post(action));
  }

  private static RequestSpecification browser() {
    return given().redirects().follow(false).accept(ACCEPT);
  }
}
