package vestiary.calendar;

/**
 * Takes a solemnity of the week to a Sunday of Ordinary Time beside it, for the good of the
 * faithful: a dedication on Wednesday 22 October 2025 may be kept on Sunday the 19th.
 *
 * <p>The Sunday must be one that the celebration outranks and that nothing else has taken; a day
 * that obliges is not emptied. The weekday is then a weekday again: common practice, no source.
 * Source: UNLY 58.
 */
final class PastoralTransfers {

  private final YearPlan plan;
  private final YearOutline year;
  private final ObligationRules obligation;

  PastoralTransfers(YearPlan plan, ObligationRules obligation) {
    this.plan = plan;
    this.year = plan.year();
    this.obligation = obligation;
  }

  void apply(Proper.OnSunday wish) {
    int day = plan.findDay(wish.celebration());
    if (day == 0 || year.isSunday(day) || !mayLeave(wish.celebration(), day)) return;
    int sunday = freeSunday(day, wish.sunday());
    if (sunday != 0) {
      plan.move(
          wish.celebration(),
          day,
          sunday,
          Sentence.of("this church keeps it on the Sunday for the good of the faithful."),
          "UNLY 58");
    }
  }

  private boolean mayLeave(String celebration, int day) {
    Celebration kept = plan.prevailing(day);
    return kept.id().equals(celebration)
        && kept.precedence().isBefore(Precedence.SUNDAY)
        && !obligation.isHolyDay(celebration, day, year);
  }

  /** The Sunday that is wished and free, or 0. */
  private int freeSunday(int day, SundayBeside wish) {
    int before = year.sundayUpTo(day);
    int after = year.sundayFrom(day);
    return switch (wish) {
      case BEFORE -> free(before);
      case AFTER -> free(after);
      case NEAREST -> day - before <= after - day ? either(before, after) : either(after, before);
    };
  }

  private int either(int first, int second) {
    return free(first) != 0 ? first : free(second);
  }

  private int free(int sunday) {
    boolean inTheYear = sunday >= 1 && sunday <= year.length();
    boolean isGreen =
        inTheYear
            && plan.seasons().season(sunday) == Season.ORDINARY
            && plan.prevailing(sunday).precedence() == Precedence.SUNDAY;
    return isGreen ? sunday : 0;
  }
}
