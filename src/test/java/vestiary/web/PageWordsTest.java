package vestiary.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.qute.Engine;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.Variant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every word of every template has its Spanish, with nothing lost on the way. */
class PageWordsTest {

  private static final Path TEMPLATES = Path.of("src/main/resources/templates");
  private static final Path WORDS = Path.of("src/main/resources/words/pages");
  private static final Pattern KEPT = Pattern.compile("\\{[^}]*}|&#?\\w+;");

  @Test
  void every_run_of_text_in_a_template_has_its_spanish() throws IOException {
    List<String> missing = new ArrayList<>();
    for (String folder : folders()) {
      Set<String> known = PageWords.in(folder).all().keySet();
      keys(folder).stream()
          .filter(key -> !known.contains(key))
          .forEach(key -> missing.add(folder + ": " + key));
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void no_spanish_is_kept_that_no_template_asks_for() throws IOException {
    List<String> idle = new ArrayList<>();
    for (Path file : list(WORDS)) {
      String folder = file.getFileName().toString().replace("_es.json", "");
      Set<String> asked = keys(folder);
      PageWords.in(folder).all().keySet().stream()
          .filter(key -> !asked.contains(key))
          .forEach(key -> idle.add(folder + ": " + key));
    }
    assertEquals(List.of(), idle);
  }

  @Test
  void the_spanish_has_the_expressions_of_the_english_and_no_markup_of_its_own()
      throws IOException {
    for (String folder : folders()) {
      PageWords.in(folder)
          .all()
          .forEach(
              (english, spanish) -> {
                assertEquals(kept(english), kept(spanish), spanish);
                assertFalse(spanish.contains("<") || spanish.contains("'"), spanish);
                assertFalse(spanish.isBlank(), english);
              });
    }
  }

  @Test
  void text_attributes_and_words_given_to_a_tag_are_read_and_names_are_not() {
    Set<String> keys =
        keysIn(
            """
            {@vestiary.web.Frame frame}
            {#kind}form{/kind}<h1 class="big {#if frame.a > 1}on{/if}">Two  {n} sets
            are free</h1> <b>{n}</b> <script>let x = "no";</script>
            <img alt="Picture {n}" src="/a.png"> {#field name='a' label='Its name' hint='As it is called' /}
            """);
    assertEquals(
        Set.of("Two {n} sets are free", "Picture {n}", "Its name", "As it is called"), keys);
  }

  @Test
  void a_page_speaks_the_language_that_it_is_given_and_escapes_in_both() {
    TemplateText.Words words =
        new TemplateText.Words() {
          @Override
          public String of(String key) {
            return key.equals("Free at {place}: {n}") ? "Hay {n} en {place}" : key;
          }

          @Override
          public String both(String here, String other) {
            return PageWords.in("none").both(here, other);
          }
        };
    String source =
        TemplateText.with("<p title=\"Free at {place}: {n}\">Free at {place}: {n}</p>", words);
    Engine engine =
        Engine.builder()
            .addDefaults()
            .addSectionHelper(new Spoken.Factory())
            .addResultMapper(new HtmlEscaper(List.of("text/html")))
            .build();
    TemplateInstance page =
        engine
            .parse(source, Variant.forContentType("text/html"))
            .data("place", "<i>\"Ferry\"", "n", 2);
    assertEquals(
        "<p title=\"Free at &lt;i&gt;&quot;Ferry&quot;: 2\">Free at &lt;i&gt;&quot;Ferry&quot;: 2</p>",
        page.render());
    page.setLocale(Locale.forLanguageTag("es"));
    assertEquals(
        "<p title=\"Hay 2 en &lt;i&gt;&quot;Ferry&quot;\">Hay 2 en &lt;i&gt;&quot;Ferry&quot;</p>",
        page.render());
  }

  private static Set<String> kept(String text) {
    return new TreeSet<>(KEPT.matcher(text).results().map(MatchResult::group).toList());
  }

  private static List<String> folders() throws IOException {
    List<String> folders =
        list(TEMPLATES).stream()
            .filter(Files::isDirectory)
            .map(folder -> folder.getFileName().toString())
            .toList();
    assertTrue(folders.size() > 30, "the templates were found");
    return folders;
  }

  private static Set<String> keys(String folder) throws IOException {
    Set<String> keys = new LinkedHashSet<>();
    for (Path template : list(TEMPLATES.resolve(folder))) {
      if (template.toString().endsWith(".html")) {
        keys.addAll(keysIn(Files.readString(template)));
      }
    }
    return keys;
  }

  private static Set<String> keysIn(String source) {
    Set<String> keys = new LinkedHashSet<>();
    TemplateText.with(
        source,
        new TemplateText.Words() {
          @Override
          public String of(String key) {
            keys.add(key);
            return key;
          }

          @Override
          public String both(String here, String other) {
            return here;
          }
        });
    return keys;
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }
}
