package vestiary.calendar;

/**
 * A row of the table of Masses that may be said beside the Mass of the day.
 *
 * <p>Wednesday 16 December 2026, in Advent, allows a votive Mass by the celebrant's judgement and
 * none at free choice. Source: GIRM 371 to 381; the rows as in the table of the Ceremonial of
 * Bishops (from memory).
 */
enum DayKind {
  GOOD_FRIDAY_OR_HOLY_SATURDAY("-------", Sentence.of("Good Friday and Holy Saturday")),
  TRIDUUM("-------", Sentence.of("Holy Thursday and Easter Sunday")),
  PRIVILEGED_SUNDAY("-------", Sentence.of("Sundays of Advent, Lent and Easter")),
  OBLIGING_SOLEMNITY("-------", Sentence.of("solemnities of obligation")),
  OTHER_SOLEMNITY("----Y--", Sentence.of("solemnities and All Souls")),
  ASH_WEDNESDAY_OR_HOLY_WEEK("----Y--", Sentence.of("Ash Wednesday and the weekdays of Holy Week")),
  EASTER_OCTAVE("----Y--", Sentence.of("the weekdays of the Easter octave")),
  SUNDAY("YB--Y--", Sentence.of("Sundays of Christmas Time and Ordinary Time")),
  FEAST("YB--Y--", Sentence.of("feasts")),
  PRIVILEGED_WEEKDAY(
      "YB--YY-", Sentence.of("weekdays of Lent, 17 to 24 December and the octave of Christmas")),
  MEMORIAL_OR_SEASON(
      "YBR-YY-",
      Sentence.of("obligatory memorials and weekdays of Advent, Christmas and Easter Time")),
  ORDINARY_WEEKDAY("YBRYYYY", Sentence.of("weekdays of Ordinary Time"));

  private final String cells;
  private final Sentence words;

  DayKind(String cells, Sentence words) {
    this.cells = cells;
    this.words = words;
  }

  /** The row a day belongs to, by the celebration kept and whether it obliges here. */
  static DayKind of(Day day, boolean sunday) {
    Celebration kept = day.kept();
    return switch (kept.precedence()) {
      case TRIDUUM -> sunday ? TRIDUUM : GOOD_FRIDAY_OR_HOLY_SATURDAY;
      case PRIVILEGED_SUNDAY -> PRIVILEGED_SUNDAY;
      case ALL_SOULS -> OTHER_SOLEMNITY;
      case ASH_WEDNESDAY -> ASH_WEDNESDAY_OR_HOLY_WEEK;
      case HOLY_WEEK_WEEKDAY -> HolyThursday.is(kept) ? TRIDUUM : ASH_WEDNESDAY_OR_HOLY_WEEK;
      case EASTER_OCTAVE -> EASTER_OCTAVE;
      default -> ofLowerDay(day, sunday);
    };
  }

  private static DayKind ofLowerDay(Day day, boolean sunday) {
    Celebration kept = day.kept();
    if (kept.rank() == Rank.SOLEMNITY) {
      return day.obligation() ? OBLIGING_SOLEMNITY : OTHER_SOLEMNITY;
    }
    if (sunday) return SUNDAY;
    int number = kept.precedence().number();
    if (number <= 8) return FEAST;
    if (number == 9) return PRIVILEGED_WEEKDAY;
    return kept.precedence() == Precedence.ORDINARY_WEEKDAY ? ORDINARY_WEEKDAY : MEMORIAL_OR_SEASON;
  }

  /** Whether a Mass of this column may be said, with the leave the column stands for. */
  boolean permits(MassColumn column) {
    return cells.charAt(column.ordinal()) != '-';
  }

  /** Whether it takes somebody's leave or judgement. */
  boolean needsLeave(MassColumn column) {
    char cell = cells.charAt(column.ordinal());
    return cell == 'B' || cell == 'R';
  }

  /** The days of this row, for a sentence. */
  Sentence words() {
    return words;
  }
}
