package vestiary.feed;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import vestiary.cluster.Cluster;
import vestiary.people.Attendance;
import vestiary.people.PersonRole;
import vestiary.planning.RoleAt;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadStamped;
import vestiary.telling.Tongue;
import vestiary.vesting.Window;

/** Masses as events: for one who is named at them, or for whoever looks after a church. */
final class MassEvents {

  /** Whoever else is named may be a child: of them a church's calendar says nothing. */
  private static final Set<PersonRole> NAMED =
      EnumSet.of(PersonRole.PRIEST, PersonRole.DEACON, PersonRole.BISHOP);

  private final Cluster cluster;
  private final Tongue tongue;

  MassEvents(Cluster cluster, Tongue tongue) {
    this.cluster = cluster;
    this.tongue = tongue;
  }

  /** One of that person's own: he is engaged, unless he is away then. */
  CalendarEvent ofPerson(ReadStamped.Stamped one, UUID person, Attendance attendance) {
    DatedMass mass = one.mass();
    boolean isAway = RoleAt.isAway(mass, person, attendance);
    return event(
        one,
        isAway ? tongue.say("feed.away", what(mass)) : what(mass),
        "%s. %s".formatted(tongue.deed(mass, person, attendance), setOut(mass)),
        !isAway);
  }

  /** One of a church. */
  CalendarEvent ofChurch(ReadStamped.Stamped one, Attendance attendance) {
    List<String> lines = new ArrayList<>();
    one.mass()
        .findCelebrant()
        .filter(celebrant -> NAMED.contains(celebrant.role()))
        .map(priest -> tongue.named(priest.tightName(), one.mass(), priest, attendance))
        .ifPresent(words -> lines.add(words + "."));
    lines.add(setOut(one.mass()));
    return event(one, what(one.mass()), String.join(" ", lines), false);
  }

  private String what(DatedMass mass) {
    return "%s (%s)".formatted(tongue.sentence(tongue.whole(mass)), tongue.colour(mass.colour()));
  }

  private String setOut(DatedMass mass) {
    Window window = Window.of(mass.toVestedMass(), cluster.policies().vesting());
    return tongue.say("setout.by", tongue.clock(window.setOut().atZone(cluster.zone())));
  }

  private CalendarEvent event(
      ReadStamped.Stamped one, String summary, String description, boolean busy) {
    DatedMass mass = one.mass();
    String place = mass.church().place();
    return new CalendarEvent(
        "%s@%s".formatted(mass.id().value(), cluster.id()),
        one.stamp().sequence(),
        one.stamp().changed(),
        mass.start(),
        mass.end(),
        summary,
        place.isEmpty() ? mass.church().name() : mass.church().name() + ", " + place,
        description,
        mass.chosen().cancelled(),
        busy);
  }
}
