package vestiary.exchange;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Stream;

/** Which column of a list holds what the API keeps in a field of another name. */
final class FieldColumns {

  private static final Map<String, String> OTHER_NAMES =
      Map.of(
          "start", "time",
          "slug", "key",
          "month", "day",
          "titular.name", "title",
          "titular.day", "titularDay",
          "titular.colour", "titularColour");

  private FieldColumns() {}

  /** Name of the column, or empty if the whole line is meant. */
  static String columnOf(String field, ImportWhat what) {
    return Stream.of(
            Stream.of(field),
            Stream.ofNullable(OTHER_NAMES.get(field)),
            Arrays.stream(field.split("\\.")))
        .flatMap(names -> names)
        .filter(name -> what.columns().stream().anyMatch(column -> column.name().equals(name)))
        .findFirst()
        .orElse("");
  }
}
