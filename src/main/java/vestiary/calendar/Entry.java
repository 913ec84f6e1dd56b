package vestiary.calendar;

import java.util.Set;

/**
 * One line of a calendar table, or one celebration proper to a church.
 *
 * @param movable whether its date hangs on another day
 * @param option the choice under which it applies, for example {@code ascension=sunday}, or empty
 * @param since first year it stood in the calendar
 * @param until last year it stood so in the calendar
 */
record Entry(
    Celebration celebration,
    DateRule when,
    boolean movable,
    Set<Kind> kinds,
    String option,
    int since,
    int until) {

  Entry {
    kinds = Set.copyOf(kinds);
  }

  String id() {
    return celebration.id();
  }

  Rank rank() {
    return celebration.rank();
  }

  Precedence precedence() {
    return celebration.precedence();
  }

  boolean isKeptIn(int year) {
    return since <= year && year <= until;
  }

  boolean isSeparateMass() {
    return kinds.contains(Kind.SEPARATE_MASS);
  }

  /** Whether the day of the season itself, which all else is laid over. */
  boolean isDayOfTheSeason() {
    return switch (precedence()) {
      case TRIDUUM, PRIVILEGED_SUNDAY, ASH_WEDNESDAY, HOLY_WEEK_WEEKDAY, EASTER_OCTAVE, SUNDAY ->
          true;
      default -> false;
    };
  }

  /** The same celebration with another rank and place, as a church or a collision makes it. */
  Entry with(Rank rank, Precedence precedence, String source) {
    Celebration raised =
        new Celebration(
            id(),
            celebration.name(),
            rank,
            precedence,
            celebration.colours(),
            source,
            celebration.colourReason());
    return new Entry(raised, when, movable, kinds, option, since, until);
  }

  Entry on(DateRule otherDay, boolean staysMovable) {
    return new Entry(celebration, otherDay, staysMovable, kinds, option, since, until);
  }

  Entry withYears(int firstYear, int lastYear) {
    return new Entry(celebration, when, movable, kinds, option, firstYear, lastYear);
  }
}
