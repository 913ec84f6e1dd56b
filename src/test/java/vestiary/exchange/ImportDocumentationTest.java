package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.calendar.Term;

/** The page for users and the importer name the same columns and words. */
class ImportDocumentationTest {

  private static final Path PAGE = Path.of("docs", "import.md");

  @ParameterizedTest
  @EnumSource
  void every_list_is_documented_as_it_is_read(ImportWhat what) throws IOException {
    List<String> expected =
        new ArrayList<>(List.of("| Column | Required | Meaning |", "|---|---|---|"));
    for (Column column : what.columns()) {
      expected.add(
          "| %s | %s | %s |"
              .formatted(column.name(), column.required() ? "yes" : "no", column.meaning()));
    }

    assertEquals(expected, tableUnder("### " + what.id()));
  }

  @Test
  void the_words_that_cells_may_hold_are_all_listed() throws IOException {
    String page = Files.readString(PAGE).replaceAll("\\s+", " ");

    assertTrue(page.contains(Words.PIECE_KINDS.toString()));
    for (MassKind kind : MassKind.values()) {
      assertTrue(page.matches("(?s).*[ :]" + kind.id() + "[,;.].*"), kind.id());
    }
    for (Colour colour : Colour.values()) {
      assertTrue(page.contains(colour.id()), colour.id());
    }
    assertTrue(page.contains(Words.PROPER_PLACES.toString()));
    assertEquals(ImportWhat.CARE, Term.find(ImportWhat.class, "care").orElseThrow());
  }

  private static List<String> tableUnder(String heading) throws IOException {
    return Files.readAllLines(PAGE).stream()
        .dropWhile(line -> !line.equals(heading))
        .dropWhile(line -> !line.startsWith("|"))
        .takeWhile(line -> line.startsWith("|"))
        .toList();
  }
}
