package vestiary.exchange;

import java.util.Set;

/** What the values of a column look like, whatever the column is called. */
enum Looks {
  DATE,
  TIME,
  TIMES,
  CHURCH,
  CHURCHES,
  PERSON,
  PEOPLE,
  FLAG,
  WORD,
  TITULAR,
  NUMBER,
  TEXT;

  private static final Set<String> DATES =
      Set.of(
          "date",
          "from",
          "to",
          "due",
          "starts",
          "until",
          "dedication",
          "lastInventory",
          "grantedOn",
          "keptOn");

  private static final Set<String> NUMBERS =
      Set.of(
          "minutes",
          "setOutMinutes",
          "clearanceMinutes",
          "concelebrants",
          "deacons",
          "mostADay",
          "permittedWeekday",
          "permittedSunday",
          "latitude",
          "longitude");

  private static final Set<String> FLAGS =
      Set.of(
          "oneWay",
          "visiting",
          "minor",
          "bishop",
          "staysHome",
          "precious",
          "notInTriduum",
          "notOnHolyDays");

  private static final Set<String> WORDS =
      Set.of("mass", "colour", "colours", "role", "kind", "titularColour", "grade");

  /** What is expected in that column of that list. */
  static Looks of(ImportWhat what, String column) {
    if (what == ImportWhat.JOURNEYS && (column.equals("from") || column.equals("to"))) {
      return CHURCH;
    }
    if (DATES.contains(column)) {
      return DATE;
    }
    if (NUMBERS.contains(column)) {
      return NUMBER;
    }
    if (FLAGS.contains(column)) {
      return FLAG;
    }
    if (WORDS.contains(column)) {
      return WORD;
    }
    return switch (column) {
      case "time" -> TIME;
      case "replaces" -> TIMES;
      case "church", "home" -> CHURCH;
      case "churches" -> CHURCHES;
      case "celebrant", "person" -> PERSON;
      case "named" -> PEOPLE;
      case "titular" -> TITULAR;
      default -> TEXT;
    };
  }
}
