package vestiary.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ordo as it leaves the printer: sheets of A4 to pin up, a booklet of A5 to staple. */
@WithPackagedServer
class YearOnPaperTest {

  /** A4 and A5 (ISO 216) in the points of PDF: 210 by 297 and 148 by 210 millimetres. */
  private static final double A4_WIDTH = 595.3;

  private static final double A4_HEIGHT = 841.9;
  private static final double A5_WIDTH = 419.5;
  private static final double A5_HEIGHT = 595.3;

  /** Five millimetres, which every printer leaves blank at an edge (common practice, no source). */
  private static final double BLANK = 14.2;

  private static final Pattern DAY = Pattern.compile("(\\d{1,2}) [MTWFS] .*");
  private static final Pattern MONTH = Pattern.compile("[A-Z][a-z]+ 20\\d\\d");

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void the_year_is_printed_on_a4_with_a_month_on_each_sheet() {
    PrintedPages printed = print("/year/2027");

    printed.sheets().forEach(sheet -> assertPaper(A4_WIDTH, A4_HEIGHT, sheet));
    assertEquals(13, printed.sheets().size());
    assertEquals("December 2026", printed.sheets().get(1).lines().get(3));
    for (int month = 2; month < 13; month++) {
      assertTrue(MONTH.matcher(printed.sheets().get(month).lines().get(0)).matches());
    }
  }

  @Test
  void the_booklet_is_of_a5_pages_with_a_title_page_and_numbers_on_the_others() {
    List<PrintedPages.Sheet> pages = print("/year/2027?paper=a5").sheets();

    pages.forEach(sheet -> assertPaper(A5_WIDTH, A5_HEIGHT, sheet));
    assertEquals(
        List.of(
            "Wenlow Valley",
            "Sunday B, weekdays I",
            "The liturgical year 2027",
            "29 November 2026 to 27 November 2027.",
            "Calendar: United States.",
            "This is help for planning. The diocesan bishop, the local ordo and your liturgy office"
                + " decide."),
        joined(pages.get(0).lines()));
    for (int number = 2; number <= pages.size(); number++) {
      List<String> lines = pages.get(number - 1).lines();
      assertEquals(String.valueOf(number), lines.get(lines.size() - 1));
    }
  }

  @Test
  void every_month_of_the_booklet_begins_a_page_and_its_name_stands_on_each_of_its_pages() {
    List<String> heads =
        print("/year/2027?paper=a5").sheets().stream()
            .skip(1)
            .map(sheet -> sheet.lines().get(0))
            .filter(line -> MONTH.matcher(line).matches())
            .toList();

    assertEquals(
        List.of(
            "November 2026",
            "December 2026",
            "January 2027",
            "February 2027",
            "March 2027",
            "April 2027",
            "May 2027",
            "June 2027",
            "July 2027",
            "August 2027",
            "September 2027",
            "October 2027",
            "November 2027"),
        heads.stream().distinct().toList());
  }

  @Test
  void one_church_s_booklet_names_the_church_on_its_title_page() {
    List<String> title = print("/year/2027?church=sm&paper=a5").sheets().get(0).lines();

    assertEquals("Saint Martin, Sandreach", title.get(0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/year/2027",
        "/year/2028",
        "/year/2027?paper=a5",
        "/year/2028?paper=a5",
        "/year/2027?church=ol&paper=a5"
      })
  void every_day_is_there_once_and_whole_and_nothing_reaches_the_edge(String address) {
    List<PrintedPages.Sheet> sheets = print(address).sheets();

    assertEquals(daysOf(address), sheets.stream().flatMap(YearOnPaperTest::days).toList());
    for (PrintedPages.Sheet sheet : sheets) {
      assertTrue(
          Stream.of(sheet.left(), sheet.right(), sheet.top(), sheet.bottom())
              .allMatch(blank -> blank >= BLANK),
          sheet::toString);
      // Below the month's name a page begins with a day, never with the rest of one.
      if (MONTH.matcher(sheet.lines().get(0)).matches()) {
        assertTrue(DAY.matcher(sheet.lines().get(1)).matches(), sheet::toString);
      }
    }
  }

  private static PrintedPages print(String address) {
    return PrintedPages.of(open.browser(), server.address(address));
  }

  private static void assertPaper(double width, double height, PrintedPages.Sheet sheet) {
    assertEquals(width, sheet.width(), 1);
    assertEquals(height, sheet.height(), 1);
  }

  private static Stream<String> days(PrintedPages.Sheet sheet) {
    return sheet.lines().stream().map(DAY::matcher).filter(Matcher::matches).map(m -> m.group(1));
  }

  /** UNLY 40: 2027 begins on 29 November 2026 and 2028 a year and a day less later. */
  private static List<String> daysOf(String address) {
    LocalDate first = LocalDate.of(2026, 11, 29);
    LocalDate next = LocalDate.of(2027, 11, 28);
    LocalDate end = LocalDate.of(2028, 12, 3);
    Stream<LocalDate> days =
        address.contains("2028") ? next.datesUntil(end) : first.datesUntil(next);
    return days.map(d -> String.valueOf(d.getDayOfMonth())).toList();
  }

  /** Lines that a narrow page has broken are put together again at their full stop. */
  private static List<String> joined(List<String> lines) {
    int caution =
        lines.indexOf(
            lines.stream().filter(l -> l.startsWith("This is")).findFirst().orElseThrow());
    return Stream.concat(
            lines.subList(0, caution).stream(),
            Stream.of(String.join(" ", lines.subList(caution, lines.size()))))
        .toList();
  }
}
