package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the file format: RFC 4180, October 2005, section 2. */
class CsvTableTest {

  private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  @Test
  void cells_are_found_by_the_name_of_their_column_in_any_order_and_letter_case() {
    CsvTable table = journeys("MINUTES,To,from", "14,sa,ht");

    assertEquals("ht", table.lines().get(0).cell("from"));
    assertEquals("sa", table.lines().get(0).cell("to"));
    assertEquals("14", table.lines().get(0).cell("minutes"));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void comma_semicolon_and_tab_separate_cells(String separator) {
    CsvTable table =
        journeys(
            String.join(separator, "from", "to", "minutes"),
            String.join(separator, "ht", "sa", "14"));

    assertEquals(List.of(), table.faults());
    assertEquals("14", table.lines().get(0).cell("minutes"));
  }

  @Test
  void a_byte_order_mark_is_no_part_of_the_first_column() {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(BYTE_ORDER_MARK);
    file.writeBytes(Csv.file("from,to,minutes", "ht,sa,14"));

    CsvTable table = CsvTable.parse(file.toByteArray(), ImportWhat.JOURNEYS);

    assertEquals(List.of(), table.faults());
    assertEquals("ht", table.lines().get(0).cell("from"));
  }

  @Test
  void a_file_in_latin_1_is_refused_at_the_line_where_it_shows() {
    byte[] latin1 = "slug,name\nht,Trinity\nsj,San José\n".getBytes(StandardCharsets.ISO_8859_1);

    CsvTable table = CsvTable.parse(latin1, ImportWhat.CHURCHES);

    assertEquals(3, onlyFault(table).line());
    assertTrue(onlyFault(table).reason().contains("Save it from the spreadsheet as CSV UTF-8"));
  }

  @Test
  void a_letter_cut_off_at_the_end_is_refused() {
    byte[] whole = Csv.file("from,to,minutes", "ht,sa,é");
    byte[] cut = Arrays.copyOf(whole, whole.length - 2);

    CsvTable table = CsvTable.parse(cut, ImportWhat.JOURNEYS);

    assertTrue(onlyFault(table).reason().contains("not UTF-8"));
  }

  @Test
  void missing_columns_are_all_named() {
    CsvTable table = journeys("from,when", "ht,1");

    assertTrue(onlyFault(table).reason().endsWith("missing: to, minutes."));
    assertEquals(1, onlyFault(table).line());
  }

  @Test
  void unknown_columns_are_reported_and_not_used() {
    CsvTable table = journeys("from,to,minutes,Miles", "ht,sa,14,9");

    assertEquals(List.of("Miles"), table.unknownColumns());
    assertEquals("", table.lines().get(0).cell("Miles"));
  }

  @Test
  void a_column_that_is_there_twice_is_refused() {
    assertTrue(
        onlyFault(journeys("from,to,minutes,FROM")).reason().contains("\"FROM\" is there twice"));
  }

  @Test
  void an_empty_file_is_refused() {
    assertTrue(onlyFault(journeys("", " ")).reason().startsWith("The file is empty."));
    assertTrue(
        onlyFault(CsvTable.parse(new byte[0], ImportWhat.JOURNEYS))
            .reason()
            .startsWith("The file is empty."));
  }

  @Test
  void a_header_alone_is_a_table_without_lines() {
    assertEquals(List.of(), journeys("from,to,minutes").faults());
    assertEquals(List.of(), journeys("from,to,minutes").lines());
  }

  @Test
  void empty_lines_are_skipped_and_counted() {
    CsvTable table = journeys("from,to,minutes", "", "ht,sa,14", ",,", "  ", "ht,sj,18");

    assertEquals(List.of(3, 6), table.lines().stream().map(CsvLine::number).toList());
  }

  @Test
  void lines_are_numbered_as_an_editor_shows_them_despite_line_breaks_inside_cells() {
    CsvTable table =
        CsvTable.parse(
            Csv.file(
                "church,date,time,minutes,note",
                "ht,2026-12-06,10:30,60,\"first",
                "second",
                "third\"",
                "sa,2026-12-06,10:45,60,"),
            ImportWhat.MASSES);

    assertEquals(List.of(2, 5), table.lines().stream().map(CsvLine::number).toList());
    assertEquals("first\nsecond\nthird", table.lines().get(0).cell("note"));
  }

  @Test
  void lines_are_numbered_alike_with_carriage_returns() {
    byte[] file =
        "from,to,minutes\r\nht,sa,14\r\n\r\nht,sj,18\r\n".getBytes(StandardCharsets.UTF_8);

    CsvTable table = CsvTable.parse(file, ImportWhat.JOURNEYS);

    assertEquals(List.of(2, 4), table.lines().stream().map(CsvLine::number).toList());
  }

  @Test
  void a_quotation_mark_inside_a_quoted_cell_is_written_twice() {
    CsvTable table = journeys("from,to,minutes", "\"ht\",\"sa\",\"about \"\"14\"\", by car\"");

    assertEquals("about \"14\", by car", table.lines().get(0).cell("minutes"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"ht,sa,14", "\"ht\"x,sa,14"})
  void a_quotation_mark_out_of_place_is_refused_at_the_line_where_it_begins(String line) {
    CsvTable table = journeys("from,to,minutes", "ht,sj,18", line, "ht,ol,12");

    assertEquals(3, onlyFault(table).line());
    assertTrue(onlyFault(table).reason().startsWith("A quotation mark in the line"));
    assertEquals(List.of(), table.lines());
  }

  @Test
  void a_line_with_more_cells_than_the_header_is_refused() {
    CsvTable table = journeys("from,to,minutes", "ht,sa,14,15");

    assertEquals(2, onlyFault(table).line());
    assertTrue(
        onlyFault(table).reason().startsWith("The line has 4 cells and the header 3 columns."));
  }

  @Test
  void empty_cells_beyond_the_header_and_missing_ones_at_the_end_are_let_pass() {
    CsvTable table = journeys("from,to,minutes,oneWay,", "ht,sa,14,,,", "ht,sj,18");

    assertEquals(List.of(), table.faults());
    assertEquals("", table.lines().get(1).cell("oneWay"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+2", "+44 20", "-cmd", "@SUM(A1)", "=HYPERLINK(\"x\")"})
  void cells_that_look_like_formulas_stay_text(String cell) {
    String quoted = "\"" + cell.replace("\"", "\"\"") + "\"";

    CsvTable table = journeys("from,to,minutes", "ht,sa," + quoted);

    assertEquals(cell, table.lines().get(0).cell("minutes"));
  }

  @Test
  void twenty_thousand_lines_are_read_and_one_more_is_not() {
    String lines = "ht,sa,14\n".repeat(CsvText.MOST_LINES);

    assertEquals(CsvText.MOST_LINES, journeys("from,to,minutes", lines.strip()).lines().size());
    assertEquals(
        "The file has more than 20,000 lines after its header. Divide it into smaller files.",
        onlyFault(journeys("from,to,minutes", lines + "ht,sa,14")).reason());
  }

  @Test
  void a_hundred_thousand_lines_are_refused_at_once() {
    byte[] file = Csv.file("from,to,minutes", "ht,sa,14\n".repeat(100_000).strip());

    CsvTable table =
        assertTimeout(Duration.ofMillis(200), () -> CsvTable.parse(file, ImportWhat.JOURNEYS));

    assertEquals(CsvText.MOST_LINES + 2, onlyFault(table).line());
  }

  @Test
  void bad_lines_are_listed_up_to_as_many_as_a_file_has_lines() {
    Reading<JourneyLine> reading =
        JourneyLine.read(
            CsvTable.parse(
                Csv.file("from,to,minutes", "ht,,0\n".repeat(11_000).strip()),
                ImportWhat.JOURNEYS));

    List<BadLine> bad = reading.bad();
    assertEquals(CsvTable.MOST_FAULTS + 1, bad.size());
    assertEquals(
        "The lines from here on were not looked at.", bad.get(CsvTable.MOST_FAULTS).reason());
    assertEquals(10_002, bad.get(CsvTable.MOST_FAULTS).line());
  }

  private static CsvTable journeys(String... lines) {
    return CsvTable.parse(Csv.file(lines), ImportWhat.JOURNEYS);
  }

  private static BadLine onlyFault(CsvTable table) {
    assertEquals(1, table.faults().size(), table.faults().toString());
    return table.faults().get(0);
  }
}
