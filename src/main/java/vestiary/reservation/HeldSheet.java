package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out what is set aside in a week, or for one Mass. */
@ApplicationScoped
class HeldSheet {

  static final String ADDRESS = "/reservations";
  private static final int DAYS = 7;

  private final Frames frames;
  private final ReadReservations read;
  private final ReadCluster cluster;
  private final ReadPool pool;
  private final Clock clock;

  HeldSheet(Frames frames, ReadReservations read, ReadCluster cluster, ReadPool pool, Clock clock) {
    this.frames = frames;
    this.read = read;
    this.cluster = cluster;
    this.pool = pool;
    this.clock = clock;
  }

  /** The page of a week, from its Monday. */
  @Transactional
  HeldView week(Entries typed, String done, HeldView.Undo undo) {
    Asked asked = new Asked();
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    LocalDate monday =
        asked
            .findDate("week", typed.text("week"))
            .orElse(today)
            .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    asked.refuseIfFaulty();
    String church = typed.text("church");
    List<Reservation> found =
        read.between(monday, monday.plusDays(DAYS - 1)).stream()
            .filter(one -> church.isEmpty() || one.mass().church().slug().equals(church))
            .toList();
    return new HeldView(
        frames.of("week", ADDRESS + "?week=" + monday),
        Speech.span(monday, monday.plusDays(DAYS - 1)),
        lead(found),
        done,
        undo,
        List.of(
            new Link(say("The week before"), at(monday.minusWeeks(1), church)),
            new Link(say("The week after"), at(monday.plusWeeks(1), church)),
            new Link(say("The week’s Masses"), "/week/" + monday),
            new Link(say("What is asked for"), WishPages.ADDRESS)),
        typed.choice(
            "church",
            Stream.concat(
                Stream.of(Choice.Option.of("", say("All churches"))),
                cluster.churches().stream().map(one -> Choice.Option.of(one.slug(), one.name())))),
        List.of(new Hidden("week", monday.toString())),
        days(found));
  }

  /** What is set aside for one Mass. */
  List<HeldView.Line> lines(DatedMass mass) {
    Map<String, Reservable> things = things();
    return read.forMass(mass.id().value().toString()).stream()
        .map(one -> line(one, things))
        .toList();
  }

  private String home(Reservable thing) {
    return cluster.churches().stream()
        .filter(church -> church.id().equals(thing.pieces().get(0).home()))
        .findFirst()
        .map(Church::name)
        .orElse("");
  }

  private static String at(LocalDate monday, String church) {
    return ADDRESS + "?week=" + monday + (church.isEmpty() ? "" : "&church=" + church);
  }

  private static String lead(List<Reservation> found) {
    return found.isEmpty()
        ? say("Nothing is set aside in this week.")
        : say(
            "%s %s set aside.",
            Speech.sentence(Speech.count(found.size(), "thing")),
            found.size() == 1 ? say("is") : say("are"));
  }

  private List<HeldView.Day> days(List<Reservation> found) {
    Map<String, Reservable> things = things();
    Map<LocalDate, List<Reservation>> byDay =
        found.stream()
            .collect(
                Collectors.groupingBy(
                    one -> one.mass().date(), LinkedHashMap::new, Collectors.toList()));
    return byDay.entrySet().stream()
        .map(day -> new HeldView.Day(Speech.day(day.getKey()), churches(day.getValue(), things)))
        .toList();
  }

  private List<HeldView.Church> churches(List<Reservation> found, Map<String, Reservable> things) {
    Map<String, List<Reservation>> byChurch =
        found.stream()
            .collect(
                Collectors.groupingBy(
                    one -> one.mass().church().name(), LinkedHashMap::new, Collectors.toList()));
    return byChurch.entrySet().stream()
        .map(
            church ->
                new HeldView.Church(
                    church.getKey(),
                    church.getValue().stream().map(one -> line(one, things)).toList()))
        .toList();
  }

  private Map<String, Reservable> things() {
    List<PooledPiece> pieces = pool.pieces(clock.instant());
    Map<String, Reservable> things =
        pieces.stream()
            .map(piece -> new Reservable(piece.code(), false, List.of(piece)))
            .collect(Collectors.toMap(Reservable::code, Function.identity()));
    Reservable.of(pieces).forEach(thing -> things.put(thing.code(), thing));
    return things;
  }

  private HeldView.Line line(Reservation one, Map<String, Reservable> things) {
    Reservable thing = things.get(one.code());
    return new HeldView.Line(
        one.code(),
        WareWords.ribbon(thing),
        WareWords.what(thing),
        one.state().id(),
        ReservationWords.held(one) + ReservationWords.brought(one, home(thing)),
        ReservationWords.lost(one),
        one.state() == ReservationState.HELD ? ADDRESS + "/" + one.id() + "/release" : "",
        one.mass().church().id().value().toString());
  }
}
