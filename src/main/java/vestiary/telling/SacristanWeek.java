package vestiary.telling;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.plan.PlanResult;
import vestiary.pool.PlannedWear;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Window;

/** What the week asks of a sacristan: when to set out what, what leaves and comes, what is held. */
final class SacristanWeek {

  private final WeekSeen week;
  private final Tongue tongue;
  private final Map<UUID, List<ChurchWeek.Trouble>> churches;
  private final TroubleWords troubles;

  /**
   * @param churches those of the sacristan, by id, with what cannot stand in them in these days
   */
  SacristanWeek(WeekSeen week, Tongue tongue, Map<UUID, List<ChurchWeek.Trouble>> churches) {
    this.week = week;
    this.tongue = tongue;
    this.churches = Map.copyOf(churches);
    this.troubles = new TroubleWords(week, tongue);
  }

  /** Church by church; none where nothing is to be done. */
  List<LetterView.Section> sections() {
    return week.span().churches().stream()
        .filter(church -> churches.containsKey(church.id().value()))
        .flatMap(this::sections)
        .filter(section -> !section.items().isEmpty())
        .toList();
  }

  String lead() {
    int masses =
        (int)
            week.span().asked().stream()
                .filter(mass -> churches.containsKey(mass.church().id().value()))
                .count();
    return tongue.say("week.sacristan.lead", masses, troubles());
  }

  /** How many things cannot stand. */
  int troubles() {
    return churches.values().stream().mapToInt(List::size).sum();
  }

  private Stream<LetterView.Section> sections(Church church) {
    UUID id = church.id().value();
    return Stream.of(
        new LetterView.Section(
            tongue.say("sacristy.troubles", church.name()),
            churches.get(id).stream().map(troubles::standing).toList()),
        new LetterView.Section(
            church.name(),
            week.span().asked().stream()
                .filter(mass -> mass.church().id().equals(church.id()))
                .map(this::mass)
                .toList()),
        new LetterView.Section(
            tongue.say("leaves", church.name()),
            week.trips().stream().filter(t -> t.from().equals(id)).map(this::leaving).toList()),
        new LetterView.Section(
            tongue.say("comes", church.name()),
            week.trips().stream().filter(t -> t.to().equals(id)).map(this::coming).toList()),
        new LetterView.Section(tongue.say("out", church.name()), out(church)));
  }

  /** What a Mass asks for. */
  LetterView.Item mass(DatedMass mass) {
    Window window = Window.of(mass.toVestedMass(), week.span().cluster().policies().vesting());
    List<String> lines = new ArrayList<>();
    lines.add(tongue.say("setout.by", tongue.clock(week.local(window.setOut()))));
    lines.add(
        tongue.sentence(tongue.say("what", tongue.whole(mass), tongue.colour(mass.colour()))));
    lines.add(tongue.sentence(tongue.list(who(mass))) + ".");
    List<String> worn = week.worn(mass).stream().map(PlannedWear::piece).toList();
    List<String> held = week.held(mass);
    if (!worn.isEmpty()) {
      lines.add(tongue.say("lay", tongue.list(week.names(worn))) + ".");
    }
    if (!held.isEmpty()) {
      lines.add(tongue.say("held", tongue.list(week.names(held))));
    }
    if (worn.isEmpty() && held.isEmpty()) {
      lines.add(open(mass));
    }
    if (!mass.chosen().note().isEmpty()) {
      lines.add(mass.chosen().note());
    }
    return new LetterView.Item(tongue.moment(mass.start()), lines);
  }

  private String open(DatedMass mass) {
    Map<PieceKind, Long> needed =
        week.span().needs(mass).stream()
            .collect(Collectors.groupingBy(Need::kind, TreeMap::new, Collectors.counting()));
    return needed.isEmpty()
        ? tongue.say("wears.nothing")
        : tongue.say(
            "lay.open",
            tongue.list(
                needed.entrySet().stream()
                    .map(one -> tongue.pieces(one.getKey(), one.getValue()))
                    .toList()));
  }

  private List<String> who(DatedMass mass) {
    return Stream.of(
            mass.findCelebrant()
                .map(one -> tongue.named(tongue.called(one), mass, one, week.span().attendance()))
                .orElseGet(
                    () ->
                        tongue.say(
                            mass.ministers().bishop() ? "celebrant.bishop" : "celebrant.none")),
            tongue.say("company", mass.concelebrants()),
            tongue.say("deacons", mass.deacons()))
        .filter(words -> !words.isEmpty())
        .toList();
  }

  /** A journey, as whoever sees it off is told of it. */
  LetterView.Item leaving(PlanResult.Trip trip) {
    return trip("trip.leaves", trip, trip.leaveBy(), trip.to());
  }

  /** A journey, as whoever awaits it is told of it. */
  LetterView.Item coming(PlanResult.Trip trip) {
    return trip("trip.comes", trip, trip.arriveBy(), trip.from());
  }

  private LetterView.Item trip(String words, PlanResult.Trip trip, Instant by, UUID other) {
    String pieces = tongue.list(week.names(trip.pieces()));
    String carried =
        trip.carrier().isEmpty()
            ? tongue.say("trip.alone", pieces)
            : tongue.say("trip.with", pieces, tongue.carrier(trip.carrier()));
    return new LetterView.Item(
        tongue.say(
            words,
            tongue.day(week.local(by).toLocalDate()),
            tongue.clock(week.local(by)),
            week.church(other)),
        List.of(tongue.sentence(carried) + "."));
  }

  /** Pieces of the church that somebody has taken away and that are due back in these days. */
  private List<LetterView.Item> out(Church church) {
    Set<String> ours =
        Set.copyOf(
            week.span().pieces().stream()
                .filter(piece -> piece.home().equals(church.id()))
                .map(piece -> piece.code())
                .toList());
    Instant until = week.last().plusDays(1).atStartOfDay(week.zone()).toInstant();
    return week.span().taken().setAside().stream()
        .filter(one -> one.word().equals("out") && ours.contains(one.piece()))
        .filter(one -> one.until().isBefore(until))
        .sorted(Comparator.comparing(one -> one.until()))
        .map(
            one ->
                new LetterView.Item(
                    tongue.say("out.line", one.piece(), tongue.moment(week.local(one.until()))),
                    List.of()))
        .toList();
  }
}
