package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.problem.DayOrder;

/**
 * What a program says of the columns of its file; all empty if the file has our own names.
 *
 * @param columns pairs with semicolons between, as {@code church=Church name}, or guess
 * @param same likewise, what holds on every line
 * @param days how days are written
 */
record SaidColumns(String columns, String same, String days) {

  private static final String GUESS = "guess";

  boolean isSaid() {
    return !columns.isEmpty() || !same.isEmpty() || !days.isEmpty();
  }

  /**
   * The columns that are meant; what is not said is guessed where that is asked for.
   *
   * @throws vestiary.problem.Refused if one is not in the file or none of ours, or it must be said
   *     how days are written
   */
  ChosenColumns chosen(ImportWhat what, RawTable table, TidyCells tidy) {
    Asked asked = new Asked();
    Map<String, Integer> places = new HashMap<>();
    pairs(columns.replaceFirst("^" + GUESS + ";?", ""), "columns", what, asked)
        .forEach(
            (ours, theirs) ->
                findPlace(theirs, table)
                    .ifPresentOrElse(
                        place -> places.put(ours, place),
                        () ->
                            asked.fault("columns", say("The file has no column \"%s\".", theirs))));
    if (columns.startsWith(GUESS)) {
      new GuessColumns(what, table, tidy).guess().places().forEach(places::putIfAbsent);
    }
    Map<String, String> always = pairs(same, "same", what, asked);
    String order = days;
    if (!order.isEmpty() && Term.find(DayOrder.class, order).isEmpty()) {
      asked.fault("days", say("Write day-month-year or month-day-year."));
    }
    if (order.isEmpty()) {
      order = order(what, table, places, asked);
    }
    asked.refuseIfFaulty();
    return new ChosenColumns(places, always, order);
  }

  private static String order(
      ImportWhat what, RawTable table, Map<String, Integer> places, Asked asked) {
    var days = ColumnsSheet.days(what, table, places);
    Set<DayOrder> fitting = DayOrder.fitting(days);
    if (fitting.size() == 2 && days.stream().anyMatch(DayOrder::isAmbiguous)) {
      asked.fault(
          "days",
          say(
              "The days of the file can be read both ways; write day-month-year or month-day-year."));
    }
    return fitting.size() == 1 ? fitting.iterator().next().id() : "";
  }

  private static Map<String, String> pairs(
      String text, String field, ImportWhat what, Asked asked) {
    Map<String, String> pairs = new HashMap<>();
    for (String pair : text.split(";")) {
      if (pair.isBlank()) {
        continue;
      }
      String ours = pair.substring(0, Math.max(0, pair.indexOf('='))).strip();
      if (what.columns().stream().noneMatch(column -> column.name().equals(ours))) {
        asked.fault(
            field,
            say(
                "\"%s\" names no column of %s; write it as %s=Name in the file.",
                pair.strip(), what.id(), what.columns().get(0).name()));
      } else {
        pairs.put(ours, pair.substring(pair.indexOf('=') + 1).strip());
      }
    }
    return pairs;
  }

  private static Optional<Integer> findPlace(String name, RawTable table) {
    return IntStream.range(0, table.header().size())
        .filter(place -> table.header().get(place).equalsIgnoreCase(name))
        .boxed()
        .findFirst();
  }
}
