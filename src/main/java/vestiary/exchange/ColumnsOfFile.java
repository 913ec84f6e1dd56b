package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.Collections;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.web.Choice;

/** What people are shown of the columns of a file. */
final class ColumnsOfFile {

  private static final int SHOWN = 3;
  private static final int LONGEST_VALUE = 30;

  private ColumnsOfFile() {}

  /** Each to be chosen, and none. */
  static Stream<Choice.Option> options(RawTable table) {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("not in the file"))),
        IntStream.range(0, table.header().size())
            .mapToObj(place -> Choice.Option.of(String.valueOf(place), label(table, place))));
  }

  /** What it is called, with its letter where another is called the same. */
  static String name(RawTable table, int place) {
    String name = table.header().get(place);
    return Collections.frequency(table.header(), name) > 1 ? label(table, place) : shortened(name);
  }

  /** Its first values; of a day and a time in one cell that part which is read. */
  static String first(RawTable table, int place, Looks looks) {
    return table.lines().stream()
        .map(line -> line.cell(place))
        .filter(cell -> !cell.isEmpty())
        .limit(SHOWN)
        .map(cell -> shortened(DayAndTime.part(looks, cell)))
        .collect(Collectors.joining(", "));
  }

  /** So much of a text as fits into a line. */
  static String shortened(String text) {
    return text.length() > LONGEST_VALUE ? text.substring(0, LONGEST_VALUE) + "…" : text;
  }

  /** With its letter, as spreadsheets have it, since two may be called the same. */
  private static String label(RawTable table, int place) {
    String name = table.header().get(place);
    return "%s: %s".formatted(letters(place), name.isEmpty() ? say("(no name)") : shortened(name));
  }

  private static String letters(int place) {
    String last = String.valueOf((char) ('A' + place % 26));
    return place < 26 ? last : letters(place / 26 - 1) + last;
  }
}
