package vestiary.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.vesting.Step;

/** Whatever is said in Java has its Spanish, and takes the same values in it. */
class SaidTest {

  private static final Path SOURCES = Path.of("src/main/java/vestiary");
  private static final Path WORDS = Path.of("src/main/resources/words/said");
  private static final Path SCRIPTS = Path.of("src/main/resources/META-INF/resources/js");
  private static final String TEXT = "\"((?:[^\"\\\\\\n]|\\\\.)*)\"";
  private static final Pattern SAID =
      Pattern.compile("(?<![.\\w])(?:Speech\\.)?(?:say|word)\\(\\s*" + TEXT);
  private static final Pattern NAMED =
      Pattern.compile("\\b(?:NotThere|Outdated|Sentence\\.of)\\(\\s*" + TEXT);
  private static final Pattern SAID_OF = Pattern.compile("\\bsayOf\\(\\s*[^\";]*?,\\s*" + TEXT);
  private static final Pattern VALUE = Pattern.compile("%(?:(\\d)\\$)?[sd]");

  @Test
  void every_sentence_has_its_spanish() throws IOException {
    Map<String, String> spanish = spanish();
    List<String> missing =
        new ArrayList<>(named().stream().filter(key -> !spanish.containsKey(key)).toList());
    for (Path source : sources()) {
      keys(source).stream()
          .filter(key -> !spanish.containsKey(key))
          .forEach(key -> missing.add(source.getFileName() + ": " + key));
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void no_spanish_is_kept_that_is_never_said() throws IOException {
    Set<String> asked = named();
    for (Path source : sources()) {
      asked.addAll(keys(source));
    }
    assertEquals(
        List.of(), spanish().keySet().stream().filter(key -> !asked.contains(key)).toList());
  }

  @Test
  void the_spanish_takes_the_values_of_the_english() {
    spanish()
        .forEach((english, spanish) -> assertEquals(values(english), values(spanish), spanish));
  }

  @Test
  void rooms_agree_on_what_they_both_say_and_every_file_is_read() throws IOException {
    Map<String, String> all = new HashMap<>();
    for (String room : Said.ROOMS) {
      Said.of(room)
          .forEach(
              (english, spanish) -> {
                String before = all.put(english, spanish);
                assertTrue(before == null || before.equals(spanish), room + ": " + english);
              });
    }
    try (Stream<Path> files = Files.list(WORDS)) {
      assertEquals(
          new TreeSet<>(Said.ROOMS),
          new TreeSet<>(
              files
                  .map(file -> file.getFileName().toString().replace("_es.json", ""))
                  .filter(name -> !name.equals("nouns"))
                  .toList()));
    }
  }

  @Test
  void scripts_have_the_spanish_of_all_that_they_say_and_of_nothing_else() throws IOException {
    String words = Files.readString(SCRIPTS.resolve("words.js"));
    Set<String> known = texts(Pattern.compile(TEXT + ":\\s"), words);
    Set<String> said = new TreeSet<>();
    try (Stream<Path> scripts = Files.list(SCRIPTS)) {
      for (Path script : scripts.filter(file -> !file.endsWith("words.js")).toList()) {
        said.addAll(texts(Pattern.compile("\\bsay\\(" + TEXT), Files.readString(script)));
      }
    }
    assertEquals(said, known);
    assertFalse(said.isEmpty());
  }

  @Test
  void outside_a_request_all_is_english() {
    assertEquals("two white sets", Speech.count(2, "set", Speech.tinted("white", "sets")));
    assertEquals("8 December", Speech.date(LocalDate.of(2026, 12, 8)));
    assertFalse(Speech.locale().isPresent());
    assertNull(spanish().get("never said by anybody"));
  }

  @Test
  void spanish_counts_and_dates_as_people_say_them() {
    Spanish.Noun mass = new Spanish.Noun("Misa", "Misas", true);
    assertEquals("ninguna Misa", Spanish.count(0, mass));
    assertEquals("una Misa", Spanish.count(1, mass));
    assertEquals("veinte Misas", Spanish.count(20, mass));
    assertEquals("21 Misas", Spanish.count(21, mass));
    assertEquals("un juego", Spanish.count(1, new Spanish.Noun("juego", "juegos", false)));
    assertEquals("martes 8 de diciembre", Spanish.day(LocalDate.of(2026, 12, 8)));
    assertEquals(
        "30 de noviembre al 6 de diciembre de 2026",
        Spanish.span(LocalDate.of(2026, 11, 30), LocalDate.of(2026, 12, 6)));
    assertEquals(
        "7 al 13 de diciembre de 2026",
        Spanish.span(LocalDate.of(2026, 12, 7), LocalDate.of(2026, 12, 13)));
    assertEquals("alba, estola e ínfulas", Spanish.list(List.of("alba", "estola", "ínfulas")));
    assertEquals("siete u ocho", Spanish.choice(List.of("siete", "ocho")));
    assertEquals("blanco y hielo", Spanish.list(List.of("blanco", "hielo")));
  }

  /** What the core gives in English alone: colours, and what is lawful instead. */
  private static Set<String> named() {
    return Stream.concat(
            Stream.of(Colour.values()).map(Colour::id),
            Stream.of(Step.values()).map(Step::sentence))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Map<String, String> spanish() {
    Map<String, String> all = new HashMap<>();
    Said.ROOMS.forEach(room -> all.putAll(Said.of(room)));
    return all;
  }

  private static List<String> values(String text) {
    List<String> values = new ArrayList<>();
    for (MatchResult found : VALUE.matcher(text).results().toList()) {
      String place = found.group(1) == null ? String.valueOf(values.size() + 1) : found.group(1);
      values.add(place + found.group().charAt(found.group().length() - 1));
    }
    return values.stream().sorted().distinct().toList();
  }

  private static Set<String> texts(Pattern pattern, String source) {
    return pattern
        .matcher(source)
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> keys(Path source) {
    try {
      String text = Files.readString(source);
      Set<String> keys = new LinkedHashSet<>();
      NAMED.matcher(text).results().forEach(found -> keys.add(found.group(1).translateEscapes()));
      if (!text.contains("Speech")) {
        return keys;
      }
      SAID.matcher(text).results().forEach(found -> keys.add(found.group(1).translateEscapes()));
      SAID_OF
          .matcher(text)
          .results()
          .map(found -> found.group(1).translateEscapes())
          .forEach(key -> keys.addAll(List.of(key, key + " (1)")));
      return keys;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<Path> found = files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
      assertTrue(found.size() > 500, "the sources were found");
      return found;
    }
  }
}
