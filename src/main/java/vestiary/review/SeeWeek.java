package vestiary.review;

import static vestiary.web.Speech.say;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.MassKind;
import vestiary.cluster.Church;
import vestiary.people.Person;
import vestiary.plan.PlanResult;
import vestiary.plan.TripWords;
import vestiary.planning.Clash;
import vestiary.planning.MassWords;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.web.DayWords;
import vestiary.web.Speech;

/** Puts a week into the words in which it is looked at, signed and kept. */
final class SeeWeek {

  private final SpanToCheck span;
  private final List<PlanResult.Trip> trips;
  private final TripWords words;
  private final Locale locale;

  private SeeWeek(SpanToCheck span, List<PlanResult.Trip> trips, Locale locale) {
    this.span = span;
    this.locale = locale;
    this.trips = trips;
    this.words = new TripWords(span.churches(), span.pieces(), span.cluster().zone());
  }

  /**
   * The week as it stands.
   *
   * @param span seven days from a Monday
   * @param trips that arrive on them
   * @param locale in which celebrations are named
   */
  static WeekSeen of(
      SpanToCheck span, List<Clash> clashes, List<PlanResult.Trip> trips, Locale locale) {
    LocalDate monday = span.first();
    SeeWeek seen = new SeeWeek(span, trips, locale);
    return new WeekSeen(
        monday,
        span.churches().stream().flatMap(seen::masses).toList(),
        clashes.stream().map(SeeWeek::clash).toList());
  }

  private Stream<MassSeen> masses(Church church) {
    return span.asked().stream()
        .filter(mass -> mass.church().id().equals(church.id()))
        .sorted(
            Comparator.comparing((DatedMass mass) -> mass.start().toInstant())
                .thenComparing(mass -> mass.id().value()))
        .map(this::mass);
  }

  private MassSeen mass(DatedMass mass) {
    Set<String> pieces = pieces(mass);
    return new MassSeen(
        mass.id().value(),
        mass.church().name(),
        mass.isOnHolyDay(),
        mass.start().toLocalDateTime(),
        (int) mass.length().toMinutes(),
        what(mass),
        mass.colour(),
        mass.findCelebrant().map(Person::id).stream().toList(),
        mass.ministers().bishop(),
        MassWords.company(mass),
        words.names(pieces),
        journeys(mass, pieces),
        mass.serving().stream()
            .map(one -> new ServingSeen(one.as().id(), one.person().id()))
            .toList());
  }

  /** A weekday need not say its week on every line. */
  private String what(DatedMass mass) {
    return mass.kind() == MassKind.OF_THE_DAY
        ? DayWords.tight("", mass.option().celebration(), mass.ruling().day(), locale).name()
        : MassWords.whole(mass, locale);
  }

  private Set<String> pieces(DatedMass mass) {
    return Stream.concat(
            span.taken().planned().stream()
                .filter(one -> one.wearer().mass().equals(mass.id()))
                .map(one -> one.piece()),
            span.taken().setAside().stream()
                .filter(one -> one.masses().contains(mass.id()))
                .map(one -> one.piece()))
        .collect(Collectors.toSet());
  }

  /** Those that bring a piece for this Mass and for none before it. */
  private List<String> journeys(DatedMass mass, Set<String> pieces) {
    return trips.stream()
        .filter(trip -> trip.to().equals(mass.church().id().value()))
        .filter(trip -> trip.pieces().stream().anyMatch(pieces::contains))
        .filter(trip -> !trip.arriveBy().isAfter(mass.start().toInstant()))
        .filter(trip -> isFirstAfter(trip, mass))
        .sorted(Comparator.comparing(PlanResult.Trip::arriveBy))
        .map(trip -> journey(trip, mass, pieces))
        .toList();
  }

  /** What rides is named only where it is not all that is worn. */
  private String journey(PlanResult.Trip trip, DatedMass mass, Set<String> pieces) {
    String riding = trip.pieces().containsAll(pieces) ? "" : words.codes(trip.pieces()) + " ";
    LocalDate day = trip.arriveBy().atZone(span.cluster().zone()).toLocalDate();
    return say(
        "%sfrom %s, there by %s%s",
        riding,
        words.church(trip.from()),
        day.equals(mass.date()) ? "" : Speech.weekday(day) + " ",
        words.clock(trip.arriveBy()));
  }

  private boolean isFirstAfter(PlanResult.Trip trip, DatedMass mass) {
    return span.asked().stream()
        .filter(other -> other.church().id().equals(mass.church().id()))
        .filter(other -> !other.start().toInstant().isBefore(trip.arriveBy()))
        .filter(other -> other.start().isBefore(mass.start()))
        .noneMatch(other -> pieces(other).stream().anyMatch(trip.pieces()::contains));
  }

  private static ClashSeen clash(Clash clash) {
    return new ClashSeen(
        clash.id(),
        clash.severity().id(),
        clash.masses().stream().map(mass -> mass.id().value()).toList(),
        clash.words().about(),
        clash.words().title());
  }
}
