package vestiary.calendar;

/**
 * Which days bind to Mass. The precept of a holy day does not follow it to another date: Monday 9
 * December 2030 does not oblige in the United States. That Monday 9 December 2024 was held to is a
 * decision for that date, not a rule.
 *
 * <p>Source: canons 1246, 1247; for the United States the decree of 13 December 1991.
 */
final class ObligationRules {

  private static final Duty SUNDAY =
      new Duty(true, Sentence.of("Every Sunday is a day of obligation."), "Canon 1246 § 1");
  private static final Duty NO_HOLY_DAY =
      new Duty(false, Sentence.of("This is no day of obligation."), "Canon 1246");
  private static final Duty TRANSFERRED =
      new Duty(
          false,
          Sentence.of("The obligation does not follow a celebration to another date."),
          "Dicastery for Divine Worship, note of 23 January 2025");

  private final CalendarNorms norms;
  private final Duty holyDay;
  private final Duty lapsed;

  ObligationRules(CalendarNorms norms) {
    this.norms = norms;
    Sentence here =
        norms.offered().id().equals("general")
            ? Sentence.of("by the universal list")
            : inThe(norms);
    this.holyDay =
        new Duty(
            true, Sentence.of("This is a holy day of obligation %s.", here), norms.dutySource());
    this.lapsed =
        new Duty(
            false,
            Sentence.of(
                "This holy day does not oblige %s when it falls on a Saturday or a Monday.", here),
            norms.dutySource());
  }

  Duty of(DayChoice choice, YearOutline year) {
    for (DatedDuty dated : norms.duties()) {
      if (dated.isOn(year.year(), choice.day())) return dated.duty();
    }
    if (year.isSunday(choice.day())) return SUNDAY;
    String kept = choice.kept().id();
    if (!norms.holyDays().contains(kept)) return NO_HOLY_DAY;
    if (!choice.transfers().isEmpty()) return TRANSFERRED;
    return lapses(kept, choice.day(), year) ? lapsed : holyDay;
  }

  /** Whether this celebration obliges on this day of the week, if it is kept on its own date. */
  boolean isHolyDay(String celebration, int day, YearOutline year) {
    return norms.holyDays().contains(celebration) && !lapses(celebration, day, year);
  }

  /** All Saints on Saturday 1 November 2025 did not oblige in the United States. */
  private boolean lapses(String celebration, int day, YearOutline year) {
    boolean besideSunday = year.sundayBeside(day) != day;
    return besideSunday && norms.lapseBesideSunday().contains(celebration);
  }

  private static Sentence inThe(CalendarNorms norms) {
    LocalName country = norms.offered().name();
    String article = country.english().startsWith("United") ? "the " : "";
    return Sentence.of("in %s", new Sentence.Named(country, article + country.english()));
  }
}
