package vestiary.planning;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import vestiary.allocation.celebrant.CountedDay;
import vestiary.allocation.celebrant.Permitted;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Stay;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.CountBy;
import vestiary.cluster.Policies;
import vestiary.people.Absence;
import vestiary.people.Ministry;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;

/**
 * What decides how much anybody may serve. Whoever counts Masses or asks what a priest can take
 * makes the core's question here, so that a clash never says other than the advice.
 *
 * @param ministries what people serve, of those of whom anything was said
 * @param calendars that of each church
 */
public record Serving(Map<UUID, Ministry> ministries, Map<ChurchId, LiturgicalCalendar> calendars) {

  public Serving {
    ministries = Map.copyOf(ministries);
    calendars = Map.copyOf(calendars);
  }

  Priest priest(Person person, Policies policies, Collection<Absence> away) {
    Ministry ministry = ministries.getOrDefault(person.id(), Ministry.UNSAID);
    return priest(person, ministry, policies, away, List.of());
  }

  /**
   * One priest, with the leave on file for him, else that for all.
   *
   * @param away of anybody
   * @param homes where he sets out from, one or none
   */
  public static Priest priest(
      Person person,
      Ministry ministry,
      Policies policies,
      Collection<Absence> away,
      List<ChurchId> homes) {
    return new Priest(
        new PriestId(person.id()),
        ministry.mostADay() == 0 ? Priest.NO_BOUND_OF_HIS_OWN : ministry.mostADay(),
        ministry
            .findPermission()
            .map(one -> new Permitted(one.weekday(), one.sunday()))
            .orElse(new Permitted(policies.permittedWeekday(), policies.permittedSunday())),
        ministry.churches(),
        ministry.days(),
        away.stream()
            .filter(one -> one.person().equals(person.id()))
            .map(one -> new vestiary.allocation.celebrant.Absence(one.from(), one.to()))
            .toList(),
        Set.copyOf(ministry.languages()),
        homes);
  }

  /** The day on which a Mass counts, by the one or the other kind of day. */
  public CountedDay counted(DatedMass mass, CountBy countBy) {
    return counted(mass, countBy, calendars.get(mass.church().id()).day(mass.date()));
  }

  /**
   * The same for whoever has the calendar.
   *
   * @param civil what the calendar says of its date
   */
  public static CountedDay counted(DatedMass mass, CountBy countBy, Day civil) {
    return CountedDay.of(mass.kind(), countBy == CountBy.CALENDAR ? civil : mass.ruling().day());
  }

  /** A Mass or another liturgy as a place in somebody's day. */
  public static Stay stay(DatedMass mass) {
    return new Stay(
        mass.id(),
        mass.church().id(),
        mass.date(),
        mass.start().toInstant(),
        mass.end().toInstant());
  }
}
