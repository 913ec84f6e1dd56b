package vestiary.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.qute.Engine;
import io.quarkus.qute.EngineBuilder;
import io.quarkus.qute.EvalContext;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.NamespaceResolver;
import io.quarkus.qute.ReflectionValueResolver;
import io.quarkus.qute.TemplateLocator.TemplateLocation;
import io.quarkus.qute.UserTagSectionHelper;
import io.quarkus.qute.Variant;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A template rendered without the server, checked for what holds on every page, and laid down with
 * its style sheets under {@code target/pages} to be looked at.
 */
public final class RenderedPage {

  private static final Path TEMPLATES = Path.of("src/main/resources/templates");
  private static final Path STATIC = Path.of("src/main/resources/META-INF/resources");
  private static final Path PAGES = Path.of("target/pages");
  private static final Engine ENGINE = engine();

  private final String html;

  private RenderedPage(String html) {
    this.html = html;
  }

  /** Renders {@code template} and lays it down as {@code name.html}. */
  public static RenderedPage of(String template, String name, Object view) {
    String html = ENGINE.getTemplate(template).data("view", view).render();
    layDown(name, html);
    return new RenderedPage(html);
  }

  /** A page that the server sent. */
  public static RenderedPage from(String html) {
    return new RenderedPage(html);
  }

  /** A part of a page, rendered alone. */
  public static String fragment(String template, Map<String, Object> data) {
    return ENGINE.getTemplate(template).render(data);
  }

  public String html() {
    return html;
  }

  /** The text without tags, blanks run together. */
  public String words() {
    return html.replaceAll("(?s)<(script|style|title)[^>]*>.*?</\\1>", " ")
        .replaceAll("<[^>]+>", " ")
        .replace("&nbsp;", " ")
        .replaceAll("\\s+", " ")
        .replaceAll(" ([,.;:])", "$1");
  }

  public RenderedPage says(String... sentences) {
    for (String sentence : sentences) {
      assertTrue(words().contains(sentence), () -> "\"" + sentence + "\" not in: " + words());
    }
    return this;
  }

  public RenderedPage keepsSilentOn(String... sentences) {
    for (String sentence : sentences) {
      assertFalse(words().contains(sentence), () -> "\"" + sentence + "\" in: " + words());
    }
    return this;
  }

  /** What WCAG, the content security policy and the house ask of every page. */
  public RenderedPage keepsTheHouseRules() {
    assertEquals(1, count("<h1[ >]"), "one heading of the first level");
    assertEquals(1, count("<main[ >]"), "one main part");
    assertTrue(html.contains("class=\"skip\" href=\"#main\""), "a way past the running head");
    assertEquals(0, count("\\sstyle="), "no inline style");
    assertEquals(0, count("\\son[a-z]+="), "no inline script");
    assertEquals(0, count("<script(?![^>]*\\ssrc=)"), "no inline script");
    assertEquals(0, count("(src|href|action)=\"(https?:)?//"), "nothing from elsewhere");
    assertEquals(0, count("\\{[a-zA-Z#/@!]"), () -> "unrendered expressions in " + html);
    assertEquals(0, count("NOT_FOUND"), "unresolved values");
    assertEquals(List.of(), repeatedIds(), "every id once");
    assertEquals(List.of(), linksToNowhere(), "every reference in the page arrives");
    assertEquals(List.of(), fieldsWithoutLabel(), "every field has its label");
    return this;
  }

  private int count(String pattern) {
    return (int) Pattern.compile(pattern).matcher(html).results().count();
  }

  private List<String> all(String pattern) {
    return Pattern.compile(pattern).matcher(html).results().map(r -> r.group(1)).toList();
  }

  private List<String> repeatedIds() {
    List<String> ids = new ArrayList<>(all("\\sid=\"([^\"]+)\""));
    all("\\sid=\"([^\"]+)\"").stream().distinct().forEach(ids::remove);
    return ids;
  }

  private List<String> linksToNowhere() {
    List<String> ids = all("\\sid=\"([^\"]+)\"");
    return Stream.of(
            all("href=\"#([^\"]+)\""),
            all("aria-labelledby=\"([^\"]+)\""),
            all("aria-describedby=\"([^\"]+)\""),
            all("\\sfor=\"([^\"]+)\""),
            all("\\slist=\"([^\"]+)\""))
        .flatMap(List::stream)
        .flatMap(references -> Stream.of(references.strip().split("\\s+")))
        .filter(id -> !ids.contains(id))
        .toList();
  }

  /** A field is labelled by {@code for}, or stands inside its label. */
  private List<String> fieldsWithoutLabel() {
    List<String> labelled = all("\\sfor=\"([^\"]+)\"");
    String outsideLabels = html.replaceAll("(?s)<label(?![^>]*\\sfor=).*?</label>", "");
    return Pattern.compile("<(?:input|select|textarea)\\b[^>]*>")
        .matcher(outsideLabels)
        .results()
        .map(MatchResult::group)
        .filter(field -> !field.contains("type=\"hidden\""))
        .filter(field -> labelled.stream().noneMatch(id -> field.contains("id=\"" + id + "\"")))
        .toList();
  }

  private static Engine engine() {
    EngineBuilder builder =
        Engine.builder()
            .addDefaults()
            .addSectionHelper(new Spoken.Factory())
            .addValueResolver(new ReflectionValueResolver())
            .addNamespaceResolver(
                NamespaceResolver.builder("inject")
                    .resolve(
                        bean ->
                            bean.getName().equals("may")
                                ? new WhoMayDoAll()
                                : Map.of("value", "", "who", ""))
                    .build())
            .addNamespaceResolver(
                NamespaceResolver.builder("Action").resolve(EvalContext::getName).build())
            .addResultMapper(new HtmlEscaper(List.of("text/html")))
            .addLocator(id -> locate(id).map(Located::new));
    for (Path tag : tags()) {
      String name = tag.getFileName().toString().replace(".html", "");
      builder.addSectionHelper(new UserTagSectionHelper.Factory(name, "tags/" + name));
    }
    return builder.build();
  }

  private static List<Path> tags() {
    try (Stream<Path> files = Files.list(TEMPLATES.resolve("tags"))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<Path> locate(String id) {
    return Optional.of(TEMPLATES.resolve(id + ".html")).filter(Files::exists);
  }

  private static void layDown(String name, String html) {
    try {
      for (String file : List.of("css", "js")) {
        copy(file);
      }
      Files.writeString(
          PAGES.resolve(name + ".html"),
          html.replaceAll("(href|src)=\"/(css|js)/", "$1=\"$2/").replaceAll("=\"/webjars/", "=\""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void copy(String folder) throws IOException {
    Files.createDirectories(PAGES.resolve(folder));
    try (Stream<Path> files = Files.list(STATIC.resolve(folder))) {
      for (Path file : files.toList()) {
        Files.write(PAGES.resolve(folder).resolve(file.getFileName()), Files.readAllBytes(file));
      }
    }
  }

  /** Pages are looked at with all their buttons. */
  public static final class WhoMayDoAll {

    public boolean to(String action) {
      return true;
    }

    public boolean in(String action, String church) {
      return true;
    }

    public String who(String action) {
      return "";
    }
  }

  private record Located(Path file) implements TemplateLocation {

    @Override
    public Reader read() {
      try {
        return new StringReader(Files.readString(file));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public Optional<Variant> getVariant() {
      return Optional.of(Variant.forContentType("text/html"));
    }
  }
}
