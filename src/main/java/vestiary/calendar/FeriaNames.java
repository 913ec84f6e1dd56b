package vestiary.calendar;

import static vestiary.calendar.OrdinalNames.english;
import static vestiary.calendar.OrdinalNames.latin;
import static vestiary.calendar.OrdinalNames.roman;
import static vestiary.calendar.OrdinalNames.spanish;

import java.time.DayOfWeek;

/** Names of weekdays and green Sundays in three languages, from memory of the books. */
final class FeriaNames {

  private FeriaNames() {}

  static LocalName advent(int week, DayOfWeek weekday) {
    return inWeek(week, weekday, "of Advent", "Adventus", "de Adviento");
  }

  static LocalName lent(int week, DayOfWeek weekday) {
    return week == 0
        ? afterAshWednesday(weekday)
        : inWeek(week, weekday, "of Lent", "Quadragesimae", "de Cuaresma");
  }

  static LocalName easter(int week, DayOfWeek weekday) {
    return inWeek(week, weekday, "of Easter", "Paschae", "de Pascua");
  }

  static LocalName ordinary(int week, DayOfWeek weekday) {
    return weekday == DayOfWeek.SUNDAY
        ? ordinarySunday(week)
        : inWeek(week, weekday, "in Ordinary Time", "per annum", "del Tiempo Ordinario");
  }

  static LocalName lateAdvent(int dayOfDecember) {
    return new LocalName(
        "Weekday of Advent, " + dayOfDecember + " December",
        "Feria Adventus, die " + dayOfDecember + " decembris",
        "Feria de Adviento, " + dayOfDecember + " de diciembre");
  }

  static LocalName christmasOctave(int dayOfOctave) {
    return new LocalName(
        english(dayOfOctave) + " Day within the Octave of Christmas",
        "De die " + roman(dayOfOctave) + " infra octavam Nativitatis",
        "Día " + roman(dayOfOctave) + " dentro de la octava de Navidad");
  }

  static LocalName christmasTime(int dayOfJanuary) {
    return new LocalName(
        "Weekday of Christmas Time, " + dayOfJanuary + " January",
        "Feria temporis Nativitatis, die " + dayOfJanuary + " ianuarii",
        "Feria del tiempo de Navidad, " + dayOfJanuary + " de enero");
  }

  private static LocalName afterAshWednesday(DayOfWeek weekday) {
    return new LocalName(
        english(weekday) + " after Ash Wednesday",
        latin(weekday) + " post Cineres",
        spanish(weekday) + " después de Ceniza");
  }

  private static LocalName ordinarySunday(int week) {
    return new LocalName(
        english(week) + " Sunday in Ordinary Time",
        "Dominica " + roman(week) + " per annum",
        "Domingo " + roman(week) + " del Tiempo Ordinario");
  }

  private static LocalName inWeek(
      int week, DayOfWeek weekday, String english, String latin, String spanish) {
    return new LocalName(
        english(weekday) + " of the " + english(week) + " Week " + english,
        latin(weekday) + ", hebdomada " + roman(week) + " " + latin,
        spanish(weekday) + " de la " + roman(week) + " semana " + spanish);
  }
}
