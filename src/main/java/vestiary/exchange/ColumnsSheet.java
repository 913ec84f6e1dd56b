package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.problem.DayOrder;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** Asks which column of a file holds what, and reads the answer. */
@ApplicationScoped
class ColumnsSheet {

  static final String DAYS = "days";

  static final String PLACE = "column-";
  private static final String SAME = "same-";
  private static final int LONGEST_SAME = 200;

  /** What is offered where a file has no such column (common practice, no source). */
  private static final Map<String, String> USUAL =
      Map.of("minutes", "60", "setOutMinutes", "30", "clearanceMinutes", "30");

  /** What is asked, as it was typed or chosen before, or as it is guessed. */
  ImportStepView.Columns of(ImportWhat what, ImportFileRow file, TidyCells tidy, Entries typed) {
    CsvText text;
    RawTable table;
    try {
      text = CsvText.parseAny(file.body);
      table = RawTable.parse(text);
    } catch (BadFile bad) {
      throw bad.refused();
    }
    Entries shown = typed.values().isEmpty() ? entries(what, file, table, tidy) : typed;
    Map<Boolean, List<ImportStepView.Row>> rows =
        what.columns().stream()
            .map(column -> row(what, column, table, shown))
            .collect(Collectors.partitioningBy(ImportStepView.Row::isTold));
    return new ImportStepView.Columns(
        rows.get(true),
        rows.get(false),
        say("Not in the file: %s", Speech.count(rows.get(false).size(), "column")),
        note(text),
        ColumnReadings.of(what, table, tidy, shown),
        unused(table, shown),
        days(what, table, shown));
  }

  /** Needed columns of which no place is known, and which have no usual value. */
  static Stream<Column> lacking(ImportWhat what, Set<String> known) {
    return what.columns().stream()
        .filter(column -> column.required() && !known.contains(column.name()))
        .filter(column -> !USUAL.containsKey(column.name()));
  }

  /**
   * What was chosen at the form.
   *
   * @throws vestiary.problem.Refused if a needed column is missing, or it must be said how days are
   *     written
   */
  ChosenColumns read(ImportWhat what, ImportFileRow file, Entries typed) {
    RawTable table;
    try {
      table = RawTable.parse(CsvText.parseAny(file.body));
    } catch (BadFile bad) {
      throw bad.refused();
    }
    Asked asked = new Asked();
    Map<String, Integer> places = new HashMap<>();
    Map<String, String> same = new HashMap<>();
    for (Column column : what.columns()) {
      String place = typed.text(PLACE + column.name());
      String always =
          asked.text(SAME + column.name(), typed.text(SAME + column.name()), LONGEST_SAME);
      if (place.matches("\\d{1,3}") && Integer.parseInt(place) < table.header().size()) {
        places.put(column.name(), Integer.valueOf(place));
      } else if (always.isEmpty() && column.required()) {
        asked.fault(
            PLACE + column.name(),
            say("Choose the column of the file, or say what holds on every line."));
      }
      if (!always.isEmpty()) {
        same.put(column.name(), always);
      }
    }
    Set<DayOrder> fitting = DayOrder.fitting(days(what, table, places));
    String order = Term.find(DayOrder.class, typed.text(DAYS)).map(Term::id).orElse("");
    boolean isOpen =
        fitting.size() == 2 && days(what, table, places).stream().anyMatch(DayOrder::isAmbiguous);
    if (order.isEmpty() && isOpen) {
      asked.fault(DAYS, say("Say how days are written; the file can be read both ways."));
    }
    asked.refuseIfFaulty();
    String known = fitting.size() == 1 ? fitting.iterator().next().id() : "";
    return new ChosenColumns(places, same, order.isEmpty() ? known : order);
  }

  private Entries entries(ImportWhat what, ImportFileRow file, RawTable table, TidyCells tidy) {
    if (file.chosen != null) {
      return entries(file.chosen.places(), file.chosen.same(), file.chosen.order());
    }
    Map<String, Integer> places = new GuessColumns(what, table, tidy).guess().places();
    Map<String, String> same = new HashMap<>();
    what.columns().stream()
        .filter(column -> column.required() && isWanting(table, places.get(column.name())))
        .filter(column -> USUAL.containsKey(column.name()))
        .forEach(column -> same.put(column.name(), USUAL.get(column.name())));
    Set<DayOrder> fitting = DayOrder.fitting(days(what, table, places));
    return entries(places, same, fitting.size() == 1 ? fitting.iterator().next().id() : "");
  }

  private static Entries entries(
      Map<String, Integer> places, Map<String, String> same, String order) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    places.forEach((column, place) -> values.put(PLACE + column, List.of(place.toString())));
    same.forEach((column, text) -> values.put(SAME + column, List.of(text)));
    values.put(DAYS, List.of(order));
    return Entries.of(values);
  }

  private static ImportStepView.Row row(
      ImportWhat what, Column column, RawTable table, Entries shown) {
    String field = PLACE + column.name();
    String chosen = shown.text(field);
    boolean isPlaced =
        chosen.matches("\\d{1,3}") && Integer.parseInt(chosen) < table.header().size();
    Integer place = isPlaced ? Integer.valueOf(chosen) : null;
    boolean offersSame = column.required() && isWanting(table, place);
    return new ImportStepView.Row(
        column.name(),
        column.required(),
        column.heading(),
        column.more(),
        field,
        shown.choice(field, ColumnsOfFile.options(table)),
        isPlaced ? ColumnsOfFile.first(table, place, Looks.of(what, column.name())) : "",
        offersSame ? SAME + column.name() : "",
        shown.field(SAME + column.name()));
  }

  /**
   * Whether it is not in the file, or not on every line.
   *
   * @param place {@code null} if it is not in the file
   */
  private static boolean isWanting(RawTable table, Integer place) {
    return place == null || table.lines().stream().anyMatch(line -> line.cell(place).isEmpty());
  }

  /** Asked where the days are all read one way or the other. */
  private static Choice days(ImportWhat what, RawTable table, Entries shown) {
    Map<String, Integer> places = new HashMap<>();
    what.columns()
        .forEach(
            column -> {
              String place = shown.text(PLACE + column.name());
              if (place.matches("\\d{1,3}")) {
                places.put(column.name(), Integer.valueOf(place));
              }
            });
    boolean matters = days(what, table, places).stream().anyMatch(DayOrder::isAmbiguous);
    if (!matters && shown.error(DAYS).isEmpty()) {
      return Choice.of(List.of());
    }
    return shown.choice(
        DAYS,
        Stream.concat(
            Stream.of(Choice.Option.of("", say("Choose how days are written"))),
            Arrays.stream(DayOrder.values())
                .map(order -> Choice.Option.of(order.id(), say(order.words())))));
  }

  /** All values of columns that hold days, each once. */
  static List<String> days(ImportWhat what, RawTable table, Map<String, Integer> places) {
    List<String> days = new ArrayList<>();
    places.forEach(
        (column, place) -> {
          if (Looks.of(what, column) == Looks.DATE && place < table.header().size()) {
            table.lines().forEach(line -> days.add(DayAndTime.dayIn(line.cell(place))));
          }
        });
    return days.stream().filter(day -> !day.isEmpty()).distinct().toList();
  }

  private static String note(CsvText text) {
    return text.charset().name().equals("windows-1252")
        ? say(
            "The file was read as Windows-1252, as older spreadsheets write; look whether letters with accents are right.")
        : "";
  }

  private static String unused(RawTable table, Entries shown) {
    Set<String> used =
        shown.values().entrySet().stream()
            .filter(entry -> entry.getKey().startsWith(PLACE))
            .flatMap(entry -> entry.getValue().stream())
            .collect(Collectors.toSet());
    return Speech.list(
        IntStream.range(0, table.header().size())
            .filter(place -> !used.contains(String.valueOf(place)))
            .filter(place -> !table.header().get(place).isEmpty())
            .mapToObj(place -> ColumnsOfFile.name(table, place))
            .toList());
  }
}
