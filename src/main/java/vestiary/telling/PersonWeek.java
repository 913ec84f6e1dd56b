package vestiary.telling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.people.Person;
import vestiary.plan.PlanResult;
import vestiary.planning.RoleAt;
import vestiary.pool.PlannedWear;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Need;
import vestiary.vesting.Role;

/**
 * What the week brings one who is named at Masses: where, when, which, in what, what he carries.
 */
final class PersonWeek {

  private final WeekSeen week;
  private final Tongue tongue;
  private final Person person;
  private final List<PlanResult.Trip> trips;

  /**
   * @param trips those he was asked to make, or makes anyway
   */
  PersonWeek(WeekSeen week, Tongue tongue, Person person, List<PlanResult.Trip> trips) {
    this.week = week;
    this.tongue = tongue;
    this.person = person;
    this.trips = List.copyOf(trips);
  }

  /** Whether that Mass is one of his. */
  static boolean concerns(DatedMass mass, UUID person) {
    return mass.isNamed(person);
  }

  /** None where nothing concerns him. */
  List<LetterView.Section> sections() {
    List<LetterView.Section> sections = new ArrayList<>();
    List<LetterView.Item> masses = masses().stream().map(this::item).toList();
    if (!masses.isEmpty()) {
      sections.add(new LetterView.Section(tongue.say("masses"), masses));
    }
    if (!trips.isEmpty()) {
      sections.add(
          new LetterView.Section(tongue.say("carry"), trips.stream().map(this::trip).toList()));
    }
    return sections;
  }

  String lead() {
    int away = (int) masses().stream().filter(this::isAway).count();
    return tongue.say("week.person.lead", masses().size() - away, trips.size(), away);
  }

  private List<DatedMass> masses() {
    return week.span().asked().stream().filter(m -> concerns(m, person.id())).toList();
  }

  private LetterView.Item item(DatedMass mass) {
    List<String> lines = new ArrayList<>();
    lines.add(
        tongue.deed(mass, person.id(), week.span().attendance())
            + ": "
            + tongue.say("what", tongue.whole(mass), tongue.colour(mass.colour())));
    if (!isAway(mass)) {
      Optional<Role> vests = RoleAt.findVests(mass, person.id());
      lines.add(wears(mass, vests));
      vests.ifPresent(role -> named(mass, role, lines));
    }
    return new LetterView.Item(
        "%s, %s".formatted(tongue.moment(mass.start()), MassPlace.of(mass)), lines);
  }

  private boolean isAway(DatedMass mass) {
    return RoleAt.isAway(mass, person.id(), week.span().attendance());
  }

  private String wears(DatedMass mass, Optional<Role> vests) {
    List<String> kinds =
        week.span().needs(mass).stream()
            .filter(need -> vests.stream().anyMatch(role -> role == need.role()))
            .filter(need -> need.ordinal() == 1)
            .map(Need::kind)
            .distinct()
            .map(tongue::piece)
            .toList();
    return kinds.isEmpty() ? tongue.say("wears.nothing") : tongue.say("wears", tongue.list(kinds));
  }

  /** Who of several wears which piece, no plan says. */
  private void named(DatedMass mass, Role role, List<String> lines) {
    List<String> pieces =
        week.worn(mass).stream()
            .filter(one -> one.wearer().role() == role)
            .map(PlannedWear::piece)
            .toList();
    if (!pieces.isEmpty()) {
      String words =
          switch (role) {
            case CONCELEBRANT -> "named.concelebrants";
            case DEACON -> "named.deacons";
            case SERVER, ACOLYTE, READER -> "named.serving";
            default -> "named.you";
          };
      lines.add(tongue.say(words, tongue.list(week.names(pieces))));
    }
  }

  private LetterView.Item trip(PlanResult.Trip trip) {
    return new LetterView.Item(
        tongue.say(
            "carry.head",
            tongue.day(week.local(trip.leaveBy()).toLocalDate()),
            week.church(trip.from()),
            tongue.clock(week.local(trip.leaveBy())),
            week.church(trip.to()),
            tongue.clock(week.local(trip.arriveBy()))),
        List.of(
            tongue.sentence(
                tongue.say("carry.pieces", tongue.list(week.names(trip.pieces()))) + ".")));
  }
}
