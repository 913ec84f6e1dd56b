package vestiary.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;

/**
 * One civil year with the days that all others are counted from. Days are days of the year, 1 to
 * {@link #length}.
 *
 * @param newYear weekday of 1 January
 * @param advent its First Sunday of Advent, 27 November to 3 December (UNLY 40)
 * @param epiphany the day the Epiphany is kept
 * @param baptism the Baptism of the Lord, which ends Christmas Time (UNLY 38)
 */
record YearOutline(
    int year, int length, DayOfWeek newYear, int easter, int advent, int epiphany, int baptism) {

  /** The outline where the Epiphany is kept as these settings say. */
  static YearOutline of(int year, CalendarNorms norms, CalendarSettings settings) {
    LocalDate first = LocalDate.ofYearDay(year, 1);
    int length = first.lengthOfYear();
    DayOfWeek newYear = first.getDayOfWeek();
    YearOutline bare = new YearOutline(year, length, newYear, Computus.easter(year), 0, 0, 0);
    int epiphany = bare.epiphany(norms, settings);
    return new YearOutline(
        year,
        length,
        newYear,
        bare.easter,
        bare.sundayFrom(length - 34),
        epiphany,
        bare.baptismAfter(epiphany));
  }

  LocalDate date(int day) {
    return LocalDate.ofYearDay(year, day);
  }

  DayOfWeek weekday(int day) {
    return newYear.plus(day - 1);
  }

  boolean isSunday(int day) {
    return weekday(day) == DayOfWeek.SUNDAY;
  }

  /** The first Sunday on this day or after it. */
  int sundayFrom(int day) {
    return day + (7 - weekday(day).getValue()) % 7;
  }

  /** The last Sunday on this day or before it. */
  int sundayUpTo(int day) {
    return day - weekday(day).getValue() % 7;
  }

  /** 29 February is 28 February in a common year. */
  int day(MonthDay monthDay) {
    return monthDay.atYear(year).getDayOfYear();
  }

  /** 25 December. */
  int christmas() {
    return length - 6;
  }

  int ashWednesday() {
    return easter - 46;
  }

  int pentecost() {
    return easter + 49;
  }

  /** The Sunday beside a Saturday or a Monday, otherwise the day itself. */
  int sundayBeside(int day) {
    return switch (weekday(day)) {
      case SATURDAY -> day + 1;
      case MONDAY -> day - 1;
      default -> day;
    };
  }

  /** UNLY 37; in England and Wales the Sunday beside 6 January when that is Saturday or Monday. */
  private int epiphany(CalendarNorms norms, CalendarSettings settings) {
    if (settings.epiphany() == EpiphanyOn.SUNDAY) return sundayFrom(2);
    return norms.keptOnSundayBeside().contains("epiphany") ? sundayBeside(6) : 6;
  }

  /**
   * The Sunday after 6 January; where the Epiphany is kept on Sunday 7 or 8 January, the Monday
   * after. In 2024 with the Epiphany on Sunday 7 January: Monday 8 January.
   */
  private int baptismAfter(int epiphany) {
    return epiphany > 6 ? epiphany + 1 : sundayFrom(7);
  }
}
