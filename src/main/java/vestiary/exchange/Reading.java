package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * What was read from a line or a file: what can be brought in, and what is wrong. A file is brought
 * in only if nothing is wrong.
 *
 * @param lines the good lines, in the order of the file
 * @param bad what is wrong, in the order of the file, duplicates last
 * @param unknownColumns columns of the file that are not used
 */
record Reading<T>(List<T> lines, List<BadLine> bad, List<String> unknownColumns) {

  Reading {
    lines = List.copyOf(lines);
    bad = List.copyOf(bad);
    unknownColumns = List.copyOf(unknownColumns);
  }

  static <T> Reading<T> of(T line) {
    return new Reading<>(List.of(line), List.of(), List.of());
  }

  static <T> Reading<T> bad(List<BadLine> bad) {
    return new Reading<>(List.of(), bad, List.of());
  }

  /** A line that asks for nothing, such as a rose Sunday's in a fortnight without one. */
  static <T> Reading<T> nothing() {
    return new Reading<>(List.of(), List.of(), List.of());
  }

  boolean isGood() {
    return bad.isEmpty();
  }

  Reading<T> withBad(List<BadLine> more) {
    List<BadLine> all = new ArrayList<>(bad);
    all.addAll(more);
    return new Reading<>(lines, all, unknownColumns);
  }

  /**
   * Adds a fault for each line that bears a name which an earlier line bears already.
   *
   * @param column the column to which the fault is put down
   * @param number physical line of a line
   * @param names what must be there once only; commonly one name
   */
  Reading<T> unique(String column, ToIntFunction<T> number, Function<T, List<String>> names) {
    Map<String, Integer> firstLines = new HashMap<>();
    List<BadLine> twice = new ArrayList<>();
    for (T line : lines) {
      int here = number.applyAsInt(line);
      List<String> own = names.apply(line);
      own.stream()
          .filter(firstLines::containsKey)
          .findFirst()
          .map(name -> new BadLine(here, column, alreadyThere(name, firstLines.get(name))))
          .ifPresent(twice::add);
      own.forEach(name -> firstLines.putIfAbsent(name, here));
    }
    return withBad(twice);
  }

  private static String alreadyThere(String name, int first) {
    return say("\"%s\" is on line %d already; keep one of the two lines.", name, first);
  }
}
