package vestiary.calendar;

import java.time.MonthDay;

/** When a celebration falls, as the tables write it. */
@FunctionalInterface
interface DateRule {

  /** The day of that year, or 0 when it has none. */
  int dayIn(YearOutline year);

  /**
   * Reads a date ({@code 06-29}), a distance ({@code easter+49}, {@code advent-7}) or a named rule.
   *
   * @throws IllegalArgumentException if the rule is none of these
   */
  static DateRule parse(String rule) {
    if (rule.startsWith("easter")) return fromEaster(distance(rule, "easter"));
    if (rule.startsWith("advent")) return fromAdvent(distance(rule, "advent"));
    return Character.isDigit(rule.charAt(0)) ? dated(rule) : named(rule);
  }

  /** The same date every year. */
  static DateRule on(MonthDay date) {
    return year -> year.day(date);
  }

  private static DateRule fromEaster(int days) {
    return year -> year.easter() + days;
  }

  private static DateRule fromAdvent(int days) {
    return year -> year.advent() + days;
  }

  private static int distance(String rule, String anchor) {
    return Integer.parseInt(rule.substring(anchor.length()));
  }

  private static DateRule dated(String rule) {
    DateRule date = on(MonthDay.parse("--" + rule.substring(0, 5)));
    if (rule.length() == 5) return date;
    if (!rule.endsWith("-not-sunday")) throw unknown(rule);
    return year -> date.dayIn(year) + (year.isSunday(date.dayIn(year)) ? 1 : 0);
  }

  private static DateRule named(String rule) {
    return switch (rule) {
      case "holy-family" -> DateRule::holyFamily;
      case "second-sunday-after-christmas" -> DateRule::secondSundayAfterChristmas;
      case "epiphany-sunday" -> YearOutline::epiphany;
      case "baptism-of-the-lord" -> YearOutline::baptism;
      case "fourth-thursday-of-november" -> DateRule::fourthThursdayOfNovember;
      default -> throw unknown(rule);
    };
  }

  /** Sunday in the octave of Christmas; Friday 30 December when Christmas is a Sunday (2022). */
  private static int holyFamily(YearOutline year) {
    boolean christmasIsSunday = year.isSunday(year.christmas());
    return christmasIsSunday ? year.christmas() + 5 : year.sundayFrom(year.christmas());
  }

  private static int secondSundayAfterChristmas(YearOutline year) {
    int sunday = year.sundayFrom(2);
    return sunday <= 5 && sunday != year.epiphany() ? sunday : 0;
  }

  private static int fourthThursdayOfNovember(YearOutline year) {
    int firstOfNovember = year.day(MonthDay.of(11, 1));
    return firstOfNovember + Math.floorMod(4 - year.weekday(firstOfNovember).getValue(), 7) + 21;
  }

  private static IllegalArgumentException unknown(String rule) {
    return new IllegalArgumentException("No date follows from \"" + rule + "\".");
  }
}
