package vestiary.people;

import java.util.List;
import java.util.stream.Stream;
import vestiary.problem.Asked;
import vestiary.problem.Refused;
import vestiary.web.Entries;

/**
 * The form of a person, read. A form says all of it: what stands empty is forgotten.
 *
 * @param person who it is
 * @param ministry what is served
 */
record PersonEntries(SavePerson.Request person, SaveMinistry.Request ministry) {

  /**
   * Reads what was typed.
   *
   * @throws Refused if a number is none
   */
  static PersonEntries read(Entries typed) {
    Asked asked = new Asked();
    Integer most = asked.number("mostADay", typed.text("mostADay"));
    Integer weekday = asked.number("permittedWeekday", typed.text("permittedWeekday"));
    Integer sunday = asked.number("permittedSunday", typed.text("permittedSunday"));
    asked.refuseIfFaulty();
    return new PersonEntries(
        new SavePerson.Request(
            null,
            typed.text("name"),
            null,
            typed.text("title"),
            typed.text("role"),
            typed.isTicked("visiting"),
            typed.isTicked("minor"),
            typed.text("responsible")),
        new SaveMinistry.Request(
            typed.all("churches"),
            languages(typed.text("languages")),
            typed.all("days"),
            most == null ? 0 : most,
            typed.text("wishes"),
            typed.text("ownSet"),
            weekday == null ? (sunday == null ? 0 : 1) : weekday,
            sunday,
            typed.text("grantedBy"),
            typed.text("grantedOn")));
  }

  private static List<String> languages(String typed) {
    return Stream.of(typed.split("[,;/]")).map(String::strip).toList();
  }
}
