package vestiary.plan;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.planning.SpanToCheck;
import vestiary.pool.Care;
import vestiary.pool.CarriedPiece;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.pool.SetAside;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Follows one set through a week: where it lies, who wears it, what journeys it makes. */
final class SetWeekSheet {

  static final int DAYS = 7;

  /** At a Mass, or held there; both pieces of the set together. */
  private record Stay(ChurchId church, MassId mass, Instant from, Instant until, String by) {}

  private record Told(Instant when, String words) {}

  private final SpanToCheck span;
  private final List<PooledPiece> pieces;
  private final List<Stay> stays;
  private final List<PlanResult.Trip> trips;
  private final Map<MassId, DatedMass> masses;
  private final TripWords words;

  /**
   * @param span seven days from a Monday
   * @param pieces of the set, one or more
   * @param carried what is carried that week
   */
  SetWeekSheet(SpanToCheck span, List<PooledPiece> pieces, List<CarriedPiece> carried) {
    this.span = span;
    this.pieces = pieces;
    this.masses = span.masses().stream().collect(Collectors.toMap(DatedMass::id, mass -> mass));
    this.words = new TripWords(span.churches(), span.pieces(), span.cluster().zone());
    Set<String> codes = pieces.stream().map(PooledPiece::code).collect(Collectors.toSet());
    this.stays = stays(codes);
    this.trips = trips(carried.stream().filter(one -> codes.contains(one.piece())).toList());
  }

  SetWeekView view(Frame frame) {
    PooledPiece first = pieces.get(0);
    String set = first.set();
    String home = words.church(first.home().value());
    return new SetWeekView(
        frame,
        say("%s set of %s", Speech.sentence(Speech.colour(first.colour())), home),
        set + ", " + Speech.span(span.first(), span.last()),
        List.of(
            week("← ", span.first().minusWeeks(1), "", set),
            week("", span.first().plusWeeks(1), " →", set),
            new Link(say("The week"), "/week/" + span.first()),
            new Link(say("Out or back"), "/s/" + set),
            new Link(say("The piece"), "/vestments/" + first.code())),
        lead(home),
        picture(),
        events());
  }

  private static Link week(String before, LocalDate monday, String after, String set) {
    return new Link(
        before + Speech.date(monday) + after, "/vestments/sets/%s/week/%s".formatted(set, monday));
  }

  private String lead(String home) {
    if (stays.isEmpty()) {
      return say("Nothing is planned for it this week; it belongs to %s.", home);
    }
    return say(
        "Set out %s this week; %s.",
        stays.size() == 1 ? say("once") : Speech.count(stays.size(), "time"),
        trips.isEmpty()
            ? say("it stays at %s", home)
            : say(
                "carried %s",
                trips.size() == 1 ? say("once") : Speech.count(trips.size(), "time")));
  }

  private List<Stay> stays(Set<String> codes) {
    PlannedDays days = PlannedDays.of(span);
    Stream<Stay> planned =
        span.taken().planned().stream()
            .filter(one -> codes.contains(one.piece()))
            .map(SetWeekSheet::stay);
    Stream<Stay> held =
        span.taken().setAside().stream()
            .filter(one -> codes.contains(one.piece()))
            .filter(one -> !one.churches().isEmpty() && !one.masses().isEmpty())
            .map(SetWeekSheet::stay);
    return Stream.concat(planned, held)
        .filter(one -> one.from().isBefore(days.until()) && one.until().isAfter(days.from()))
        .distinct()
        .sorted(Comparator.comparing(Stay::from))
        .toList();
  }

  private static Stay stay(PlannedWear one) {
    return new Stay(
        one.church(),
        one.wearer().mass(),
        one.from(),
        one.until(),
        say("worn by %s", who(one.wearer())));
  }

  private static Stay stay(SetAside one) {
    return new Stay(
        one.churches().get(0), one.masses().get(0), one.from(), one.until(), one.word());
  }

  private static String who(Wearer wearer) {
    return wearer.role() == Role.PRINCIPAL || wearer.role() == Role.MINISTER
        ? say("the celebrant")
        : say("the %s", Speech.nth(wearer.ordinal(), wearer.role().id()));
  }

  private List<PlanResult.Trip> trips(List<CarriedPiece> carried) {
    Map<Instant, List<CarriedPiece>> byTime =
        carried.stream()
            .collect(
                Collectors.groupingBy(CarriedPiece::leaveBy, TreeMap::new, Collectors.toList()));
    return byTime.values().stream().map(SetWeekSheet::trip).toList();
  }

  private static PlanResult.Trip trip(List<CarriedPiece> together) {
    CarriedPiece one = together.get(0);
    return new PlanResult.Trip(
        together.stream().map(CarriedPiece::piece).toList(),
        one.from().value(),
        one.to().value(),
        one.ready(),
        one.leaveBy(),
        one.arriveBy(),
        one.carrier(),
        one.onAsking());
  }

  private SetWeekPicture.Drawing picture() {
    List<Church> lines = lines();
    List<SetWeekPicture.Line> drawn =
        lines.stream()
            .map(
                church ->
                    new SetWeekPicture.Line(
                        church.name(),
                        church.place(),
                        lies(church.id().value()),
                        stays.stream()
                            .filter(one -> one.church().equals(church.id()))
                            .map(this::bar)
                            .toList()))
            .toList();
    List<SetWeekPicture.Way> ways =
        trips.stream()
            .map(
                trip ->
                    new SetWeekPicture.Way(
                        line(lines, trip.from()),
                        line(lines, trip.to()),
                        minutes(trip.leaveBy()),
                        minutes(trip.arriveBy()),
                        words.clock(trip.leaveBy())))
            .toList();
    List<String> days =
        IntStream.range(0, DAYS)
            .mapToObj(day -> span.first().plusDays(day))
            .map(date -> Speech.weekday(date) + " " + date.getDayOfMonth())
            .toList();
    return SetWeekPicture.of(days, drawn, ways);
  }

  /** It is where the week before left it until it is carried, and then where it was carried to. */
  private List<SetWeekPicture.Lying> lies(UUID church) {
    List<SetWeekPicture.Lying> lies = new ArrayList<>();
    UUID at = span.lies(pieces.get(0).toPiece(), PlannedDays.of(span).from()).value();
    int since = 0;
    for (PlanResult.Trip trip : trips) {
      if (at.equals(church)) {
        lies.add(new SetWeekPicture.Lying(since, minutes(trip.leaveBy())));
      }
      at = trip.to();
      since = minutes(trip.arriveBy());
    }
    if (at.equals(church)) {
      lies.add(new SetWeekPicture.Lying(since, DAYS * 24 * 60));
    }
    return lies;
  }

  private List<Church> lines() {
    Set<UUID> wanted = new LinkedHashSet<>();
    wanted.add(pieces.get(0).home().value());
    wanted.add(span.lies(pieces.get(0).toPiece(), PlannedDays.of(span).from()).value());
    stays.forEach(one -> wanted.add(one.church().value()));
    trips.forEach(trip -> wanted.addAll(List.of(trip.from(), trip.to())));
    return span.churches().stream().filter(church -> wanted.contains(church.id().value())).toList();
  }

  private static int line(List<Church> lines, UUID church) {
    return IntStream.range(0, lines.size())
        .filter(line -> lines.get(line).id().value().equals(church))
        .findFirst()
        .orElseThrow();
  }

  private SetWeekPicture.Stay bar(Stay one) {
    return new SetWeekPicture.Stay(
        minutes(one.from()), minutes(one.until()), pieces.get(0).colour(), start(one));
  }

  private String start(Stay one) {
    return findMass(one)
        .map(mass -> Speech.clock(mass.start()))
        .orElseGet(() -> words.clock(one.from()));
  }

  private Optional<DatedMass> findMass(Stay one) {
    return Optional.ofNullable(masses.get(one.mass()));
  }

  private int minutes(Instant moment) {
    ZonedDateTime time = moment.atZone(span.cluster().zone());
    int days = (int) ChronoUnit.DAYS.between(span.first(), time.toLocalDate());
    return days * 24 * 60 + time.toLocalTime().toSecondOfDay() / 60;
  }

  private List<String> events() {
    List<Told> told = new ArrayList<>();
    trips.forEach(trip -> told.add(new Told(trip.leaveBy(), told(trip))));
    stays.forEach(one -> told.add(new Told(one.from(), told(one))));
    PlannedDays days = PlannedDays.of(span);
    pieces.stream()
        .flatMap(piece -> piece.care().stream())
        .filter(care -> care.from().isBefore(days.until()))
        .filter(care -> care.findEnd().filter(end -> !end.isAfter(days.from())).isEmpty())
        .forEach(care -> told.add(new Told(care.from(), told(care))));
    return told.stream()
        .sorted(Comparator.comparing(Told::when))
        .map(Told::words)
        .distinct()
        .toList();
  }

  private String told(PlanResult.Trip trip) {
    return say(
        "%s: carried %s, at %s by %s.",
        day(trip.leaveBy()),
        words.inShort(trip),
        words.church(trip.to()),
        words.clock(trip.arriveBy()));
  }

  private String told(Stay one) {
    return say(
        "%s: %s at %s, Mass at %s; set out by %s, put away by %s.",
        day(one.from()),
        one.by(),
        words.church(one.church().value()),
        start(one),
        words.clock(one.from()),
        words.clock(one.until()));
  }

  private String told(Care care) {
    return say(
        "%s: %s is in care (%s)%s.",
        day(care.from()),
        care.piece(),
        care.reason(),
        care.findEnd().map(end -> say(", until %s", day(end.minusSeconds(1)))).orElse(""));
  }

  private String day(Instant moment) {
    return Speech.day(moment.atZone(span.cluster().zone()).toLocalDate());
  }
}
