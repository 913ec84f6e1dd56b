package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import vestiary.web.RenderedPage;

/** What a browser gets: a page with its fields and errors, or the way to another page. */
public final class Page {

  private static final Pattern FIELD =
      Pattern.compile(
          "(?s)<input\\b([^>]*)>|<select\\b([^>]*)>(.*?)</select>"
              + "|<textarea\\b([^>]*)>(.*?)</textarea>");
  private static final Pattern OPTION = Pattern.compile("(?s)<option\\b([^>]*)>");

  private final Response response;
  private final String html;

  Page(Response response) {
    this(response, response.asString());
  }

  private Page(Response response, String html) {
    this.response = response;
    this.html = html;
  }

  /** A page that was read by other means, for its forms and words. */
  public static Page of(String html) {
    return new Page(null, html);
  }

  /** The page has this status and keeps what holds on every page. */
  public Page is(int status) {
    assertEquals(status, response.statusCode(), () -> words());
    assertTrue(response.contentType().startsWith("text/html"), response.contentType());
    RenderedPage.from(html).keepsTheHouseRules();
    return this;
  }

  public int status() {
    return response.statusCode();
  }

  /** The browser is led there by 303, so that looking again sends nothing twice. */
  public Page leadsTo(String address) {
    assertEquals(303, response.statusCode(), () -> words());
    assertEquals(address, wayOn());
    return this;
  }

  /** Path and query of the address that the browser is led to. */
  public String wayOn() {
    URI way = URI.create(response.header("Location"));
    return way.getRawPath() + (way.getRawQuery() == null ? "" : "?" + way.getRawQuery());
  }

  /** Its heading of the first level, without tags. */
  public Page isHeaded(String heading) {
    assertEquals(heading, plain(first("(?s)<h1[^>]*>(.*?)</h1>")));
    return this;
  }

  public Page says(String... sentences) {
    for (String sentence : sentences) {
      assertTrue(words().contains(sentence), () -> "\"" + sentence + "\" not in: " + words());
    }
    return this;
  }

  public Page keepsSilentOn(String... sentences) {
    for (String sentence : sentences) {
      assertFalse(words().contains(sentence), () -> "\"" + sentence + "\" in: " + words());
    }
    return this;
  }

  /** The page links there; whatever stands between is not looked at. */
  public Page links(String address) {
    assertTrue(html.contains("\"" + escaped(address) + "\""), () -> address + " not in " + words());
    return this;
  }

  /** This sentence stands at that field, and the field says so to those who hear the page. */
  public Page faults(String field, String sentence) {
    assertEquals(sentence, error(field));
    assertTrue(
        first("<(?:input|select|textarea) id=\"" + field + "\"([^>]*)>")
            .contains("aria-invalid=\"true\""));
    return this;
  }

  /** What is said beside that field to be wrong with it. */
  public String error(String field) {
    return plain(first("(?s)<p class=\"error\" id=\"" + field + "-error\">(.*?)</p>"));
  }

  /** Every one of these values stands in its field, and none of them as tags of the page. */
  public Page keeps(Map<String, List<String>> typed, String action) {
    Map<String, List<String>> kept = form(action);
    typed.forEach((field, values) -> assertEquals(values, kept.get(field), field));
    assertFalse(html.contains("<script>"), "a tag that was typed is a tag of the page");
    return this;
  }

  /** What the browser would send if the form were sent as it stands. */
  public Map<String, List<String>> form(String action) {
    String form =
        first(
            "(?s)<form\\b[^>]*action=\"" + Pattern.quote(escaped(action)) + "\"[^>]*>(.*?)</form>");
    Map<String, List<String>> filled = new LinkedHashMap<>();
    FIELD
        .matcher(form)
        .results()
        .forEach(
            field ->
                sent(field)
                    .ifPresent(
                        value ->
                            filled
                                .computeIfAbsent(name(field), n -> new ArrayList<>())
                                .add(value)));
    return filled;
  }

  /** The form as it stands, with other values in some of its fields. */
  public Map<String, List<String>> form(String action, Map<String, String> typed) {
    Map<String, List<String>> filled = form(action);
    typed.forEach(
        (field, value) -> {
          assertTrue(html.contains("name=\"" + field + "\""), () -> "no field " + field);
          filled.put(field, List.of(value));
        });
    return filled;
  }

  /** The different addresses of this form that the page links to, in order. */
  public List<String> addresses(String pattern) {
    return Pattern.compile("href=\"(" + pattern + ")\"")
        .matcher(html)
        .results()
        .map(r -> r.group(1))
        .distinct()
        .toList();
  }

  /** The page as it was sent. */
  public String html() {
    return html;
  }

  /** The first form in the page whose address has this form. */
  public String action(String pattern) {
    return first("action=\"(" + pattern + ")\"");
  }

  /** What somebody reads; the whole answer where it is no page. */
  public String words() {
    return unescaped(RenderedPage.from(html).words());
  }

  private String first(String pattern) {
    return Pattern.compile(pattern)
        .matcher(html)
        .results()
        .findFirst()
        .map(r -> r.group(1))
        .orElseThrow(() -> new AssertionError(pattern + " not in: " + html));
  }

  private static String name(MatchResult field) {
    return attribute(tag(field), "name").orElse("");
  }

  private static Optional<String> sent(MatchResult field) {
    if (field.group(5) != null) {
      return Optional.of(unescaped(field.group(5)));
    }
    return field.group(3) != null ? Optional.of(chosen(field.group(3))) : typed(field.group(1));
  }

  private static Optional<String> typed(String input) {
    boolean isBox = input.contains("type=\"checkbox\"") || input.contains("type=\"radio\"");
    boolean isSent = !input.contains("type=\"file\"") && (!isBox || input.contains(" checked"));
    return isSent ? Optional.of(attribute(input, "value").orElse("")) : Optional.empty();
  }

  private static String chosen(String options) {
    List<String> tags = OPTION.matcher(options).results().map(r -> r.group(1)).toList();
    return tags.stream()
        .filter(tag -> tag.contains(" selected"))
        .findFirst()
        .or(() -> tags.stream().findFirst())
        .flatMap(tag -> attribute(tag, "value"))
        .orElse("");
  }

  private static String tag(MatchResult field) {
    return Optional.ofNullable(field.group(1))
        .or(() -> Optional.ofNullable(field.group(2)))
        .orElseGet(() -> field.group(4));
  }

  private static Optional<String> attribute(String tag, String name) {
    return Pattern.compile("\\b" + name + "=\"([^\"]*)\"")
        .matcher(tag)
        .results()
        .findFirst()
        .map(r -> unescaped(r.group(1)));
  }

  private static String plain(String part) {
    return unescaped(part.replaceAll("(?s)<[^>]+>", " ").replace("&nbsp;", " "))
        .replaceAll("\\s+", " ")
        .strip();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;");
  }

  private static String unescaped(String text) {
    return text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }
}
