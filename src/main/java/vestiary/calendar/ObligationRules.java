package vestiary.calendar;

/**
 * Which days bind to Mass. The precept of a holy day does not follow it to another date: Monday 9
 * December 2024 did not oblige by the note of 23 January 2025, though a letter of 4 September 2024,
 * since set aside, had said so for the United States.
 *
 * <p>Source: canons 1246, 1247; for the United States the decree of 13 December 1991.
 */
final class ObligationRules {

  private final CalendarNorms norms;

  ObligationRules(CalendarNorms norms) {
    this.norms = norms;
  }

  boolean obliges(DayChoice choice, YearOutline year) {
    if (year.isSunday(choice.day())) return true;
    String kept = choice.kept().id();
    return !choice.transferred() && norms.holyDays().contains(kept) && !lapses(kept, choice, year);
  }

  /** All Saints on Saturday 1 November 2025 did not oblige in the United States. */
  private boolean lapses(String kept, DayChoice choice, YearOutline year) {
    boolean besideSunday = year.sundayBeside(choice.day()) != choice.day();
    return besideSunday && norms.lapseBesideSunday().contains(kept);
  }
}
