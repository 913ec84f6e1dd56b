package vestiary.exchange;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import vestiary.calendar.Celebration;
import vestiary.problem.DayOrder;

/**
 * Turns what people write into what a list says: the name of a church into its short name, 8.12.26
 * into 2026-12-08. What is not understood stays as it stands, so that it is named as it is read.
 */
final class TidyCells {

  private final Map<String, String> churches;
  private final Map<String, String> people;
  private final KnownTitles titles;
  private final Map<String, Optional<String>> partly = new HashMap<>();

  /**
   * @param churches short names of churches by all that each is called, as {@link PlainWords#of}
   * @param people keys of people, likewise
   * @param titles celebrations by the words that churches are dedicated by
   */
  TidyCells(Map<String, String> churches, Map<String, String> people, KnownTitles titles) {
    this.churches = Map.copyOf(churches);
    this.people = Map.copyOf(people);
    this.titles = titles;
  }

  /** Whether a value is of that kind, whatever the order of its days. */
  boolean looksLike(Looks looks, String value) {
    return switch (looks) {
      case DATE -> DayOrder.isDay(DayAndTime.dayIn(value));
      case TIME -> ClockWords.find(DayAndTime.timeIn(value)).isPresent();
      case CHURCH -> findChurch(value).isPresent();
      case PERSON -> people.containsKey(PlainWords.of(value));
      case TITULAR -> isId(value) || findTitle(value).isPresent();
      case NUMBER -> value.matches("[-+]?\\d+([.,]\\d+)?");
      case FLAG -> Words.YES_OR_NO.find(word(value, Words.YES_OR_NO)).isPresent();
      default -> false;
    };
  }

  /** The cell of that column as the list would have it. */
  String tidy(ImportWhat what, String column, String cell, DayOrder order) {
    if (cell.isEmpty()) {
      return cell;
    }
    return switch (Looks.of(what, column)) {
      case DATE -> order.find(DayAndTime.dayIn(cell)).map(LocalDate::toString).orElse(cell);
      case TIME -> time(DayAndTime.timeIn(cell)).orElse(cell);
      case TIMES -> each(cell, one -> time(one).orElse(one));
      case CHURCH -> findChurch(cell).orElse(cell);
      case CHURCHES -> each(cell, one -> findChurch(one).orElse(one));
      case PERSON -> person(cell);
      case PEOPLE -> each(cell, this::person);
      case FLAG -> word(cell, Words.YES_OR_NO);
      case WORD -> each(cell, one -> word(one, words(what, column)));
      case TITULAR -> findTitle(cell).map(Celebration::id).orElse(cell);
      case NUMBER, TEXT -> cell;
    };
  }

  private static Optional<String> time(String text) {
    return ClockWords.find(text).map(Object::toString);
  }

  /** The church that is called so, or the only one that has all of these words. */
  Optional<String> findChurch(String cell) {
    String plain = PlainWords.of(cell);
    String known = churches.get(plain);
    return known != null ? Optional.of(known) : partly.computeIfAbsent(plain, this::findByWords);
  }

  /** The celebration that a church is dedicated by, if it is meant for certain. */
  Optional<Celebration> findTitle(String cell) {
    return titles.find(cell);
  }

  /** Whether it is written as the ids of celebrations are, and so is no words. */
  static boolean isId(String cell) {
    return Form.KEY.find(cell).filter(cell::equals).isPresent();
  }

  private Optional<String> findByWords(String plain) {
    List<String> words = List.of(plain.split(" "));
    List<String> found =
        churches.entrySet().stream()
            .filter(church -> List.of(church.getKey().split(" ")).containsAll(words))
            .map(Map.Entry::getValue)
            .distinct()
            .limit(2)
            .toList();
    return plain.isEmpty() || found.size() != 1 ? Optional.empty() : Optional.of(found.get(0));
  }

  private String person(String cell) {
    return people.getOrDefault(PlainWords.of(cell), cell);
  }

  private static String word(String cell, Words words) {
    if (words.find(cell).isPresent()) {
      return cell;
    }
    String joined = PlainWords.joined(cell);
    return words.all().stream()
        .filter(
            word ->
                PlainWords.joined(word).equals(joined)
                    || KnownWords.CELLS.of(word).contains(joined))
        .findFirst()
        .orElse(cell);
  }

  private static Words words(ImportWhat what, String column) {
    return switch (column) {
      case "mass" -> Words.MASSES;
      case "role" -> Words.ROLES;
      case "grade" -> Words.GRADES;
      case "kind" -> what == ImportWhat.CARE ? Words.CARE_KINDS : Words.PIECE_KINDS;
      default -> Words.COLOURS;
    };
  }

  /** Several values, between bars; or as people part them where there are none. */
  private static String each(String cell, UnaryOperator<String> one) {
    return Arrays.stream(cell.split("[|]"))
        .map(String::strip)
        .map(one)
        .collect(Collectors.joining("|"));
  }
}
