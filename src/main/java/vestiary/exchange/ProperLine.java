package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import vestiary.proper.SaveProper;

/**
 * A day that the churches keep beside the calendar of their country, as a line gives it.
 *
 * @param line physical line in the file
 * @param id short name by which the line is known when it is sent again
 * @param celebration id of a celebration, empty if the line names one itself; whether there is such
 *     a one is not asked here
 * @param day month and day such as 08-19, or empty
 * @param churches slugs; none for all churches
 * @param keptOn {@link LocalDate#MIN} if left out
 */
record ProperLine(
    int line,
    String id,
    String celebration,
    String name,
    String latin,
    String spanish,
    String day,
    String colour,
    String place,
    List<String> churches,
    String onSunday,
    LocalDate keptOn) {

  static final List<Column> COLUMNS =
      List.of(
          required("id", word("Short name of the line, for example our-lady-of-the-ford")),
          optional(
              "celebration", word("Celebration that the calendar or a line above has, by its id")),
          optional("name", word("Name of the celebration where neither has it")),
          optional("latin", word("That name in Latin")),
          optional("spanish", word("That name in Spanish")),
          optional("day", word("Month and day, for example 08-19; empty keeps the calendar's own")),
          optional("colour", word("Colour of the day; goes with name")),
          optional(
              "place",
              word("Its place in the calendar, for example memorial or patron-of-the-place")),
          optional(
              "churches",
              word("Churches that keep it, by their short names with bars between; empty is all")),
          optional(
              "onSunday", word("Sunday that it is taken to (UNLY 58): before, after or nearest")),
          optional(
              "keptOn", word("Date on which it is kept in one year, by decision of the bishop")));

  ProperLine {
    churches = List.copyOf(churches);
  }

  static Reading<ProperLine> read(CsvTable table) {
    return table.read(ProperLine::parse).unique("id", ProperLine::line, line -> List.of(line.id()));
  }

  static Reading<ProperLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    ProperLine proper =
        new ProperLine(
            cells.line(),
            cells.name("id", Form.KEY),
            cells.name("celebration", Form.KEY),
            cells.text("name"),
            cells.text("latin"),
            cells.text("spanish"),
            cells.monthAndDay("day"),
            cells.word("colour", Words.COLOURS),
            cells.word("place", Words.PROPER_PLACES),
            cells.all("churches", Form.CHURCH::find, Form.CHURCH::wanted),
            cells.word("onSunday", Words.SUNDAYS),
            cells.date("keptOn", DateWords.ISO, "").orElse(LocalDate.MIN));
    return cells.reading(() -> proper);
  }

  SaveProper.Request toRequest() {
    MonthDay yearly = day.isEmpty() ? null : MonthDay.parse("--" + day);
    return new SaveProper.Request(
        id,
        celebration,
        name,
        latin,
        spanish,
        yearly == null ? null : yearly.getMonthValue(),
        yearly == null ? null : yearly.getDayOfMonth(),
        colour,
        place,
        churches,
        onSunday,
        keptOn.equals(LocalDate.MIN) ? null : keptOn.toString(),
        null);
  }
}
