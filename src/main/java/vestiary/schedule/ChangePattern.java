package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.cluster.Church;
import vestiary.cluster.Horizon;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.SavePerson;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Changes and ends recurring Mass times, and says first which Masses that reaches. */
@ApplicationScoped
@Transactional
public class ChangePattern {

  private static final int MOST_YEARS_COUNTED = 20;

  private final PatternRows patterns;
  private final MassRows masses;
  private final FillPattern fill;
  private final ReadPatternDates dates;
  private final ApplyEffects apply;
  private final Horizon horizon;
  private final ReadCluster cluster;
  private final FindPeople known;
  private final SavePerson people;
  private final Clock clock;

  ChangePattern(
      PatternRows patterns,
      MassRows masses,
      FillPattern fill,
      ReadPatternDates dates,
      ApplyEffects apply,
      Horizon horizon,
      ReadCluster cluster,
      FindPeople known,
      SavePerson people,
      Clock clock) {
    this.patterns = patterns;
    this.masses = masses;
    this.fill = fill;
    this.dates = dates;
    this.apply = apply;
    this.horizon = horizon;
    this.cluster = cluster;
    this.known = known;
    this.people = people;
    this.clock = clock;
  }

  /**
   * A change as it was typed.
   *
   * @param from first date that it holds on; blank for at once. Before it the pattern stays as it
   *     was, and ends the day before
   * @param takeAlong whether Masses that somebody changed, yet left at their usual hour, move too
   * @param version of the pattern that the person looked at, or {@code null} to change it anyway
   */
  public record Change(
      SavePattern.Request pattern, String from, boolean takeAlong, Integer version) {

    static Change now(SavePattern.Request pattern) {
      return new Change(pattern, "", false, null);
    }
  }

  /**
   * What a change would do. Nothing is changed.
   *
   * @throws Refused as {@link #change} would
   */
  List<Effect> look(String id, Change change) {
    return prepared(get(id), change).effects();
  }

  /** The pattern as that change would make it. Nothing is changed. */
  PatternRow preview(String id, Change change) {
    return prepared(get(id), change).then();
  }

  /** A pattern in plain words, as of today, after the name of its church. */
  String words(PatternRow row) {
    String church =
        cluster.churches().stream()
            .filter(one -> one.id().value().equals(row.churchId))
            .map(Church::name)
            .findFirst()
            .orElse("");
    return church + ". " + PatternWords.of(row, LocalDate.now(clock.withZone(zone())));
  }

  /** What saving it as it is would do, since calendar and school terms may have changed. */
  List<Effect> lookUnchanged(String id) {
    PatternRow row = get(id);
    return new CompareDates(row, zone(), false)
        .with(
            ahead(row, LocalDate.EPOCH),
            openDates(row, row, LocalDate.now(clock.withZone(zone()))));
  }

  /**
   * Changes a pattern with its Masses to come.
   *
   * @return what was done
   * @throws Refused if there is none of that id, it was changed meanwhile, or a field is unfit
   */
  List<Effect> change(String id, Change change) {
    horizon.lock();
    PatternRow row = get(id);
    if (change.version() != null && change.version() != row.version) {
      throw new Refused(new Refusal.Outdated("this Mass time"));
    }
    String celebrant = new Asked().text("celebrant", change.pattern().celebrant());
    if (!celebrant.isEmpty()) {
      people.called(celebrant);
    }
    Prepared prepared = prepared(row, change);
    PatternRow then = prepared.then();
    if (prepared.isLater()) {
      row.ends = prepared.from().minusDays(1);
      patterns.persist(then);
    } else {
      row.take(then);
    }
    apply.apply(prepared.effects(), prepared.isLater() ? then : row);
    patterns.flush();
    return prepared.effects();
  }

  /** What taking a pattern off would do. Nothing is changed. */
  List<Effect> lookAtRemoval(String id) {
    return withoutDates(get(id));
  }

  /**
   * Takes a pattern off, with those of its Masses that are still to come and that nobody touched;
   * the others stay as if they had been entered by hand.
   *
   * @throws Refused if there is none of that id
   */
  public void remove(String id) {
    horizon.lock();
    PatternRow row = get(id);
    apply.apply(withoutDates(row), row);
    masses.flush();
    masses.update("patternId = null, patternDate = null where patternId = ?1", row.id);
    patterns.delete(row);
  }

  /** What ending a pattern with the day before would do. Nothing is changed. */
  List<Effect> lookAtEnd(PatternRow row, LocalDate from) {
    return new CompareDates(row, zone(), false).with(ahead(row, from), Set.of());
  }

  /** Ends a pattern with the day before; one that begins later is taken off. */
  void end(PatternRow row, LocalDate from) {
    horizon.lock();
    if (!row.starts.isBefore(from)) {
      remove(row.id.toString());
      return;
    }
    apply.apply(lookAtEnd(row, from), row);
    row.ends = from.minusDays(1);
    patterns.flush();
  }

  private List<Effect> withoutDates(PatternRow row) {
    return new CompareDates(row, zone(), false).with(ahead(row, LocalDate.EPOCH), Set.of());
  }

  /** A change that is worked out and not yet made. */
  private record Prepared(PatternRow then, LocalDate from, boolean isLater, List<Effect> effects) {}

  private Prepared prepared(PatternRow row, Change change) {
    Asked asked = new Asked();
    Optional<LocalDate> wanted = asked.findDate("from", change.from());
    PatternRow then = row.copy();
    fill.fill(then, change.pattern(), asked);
    asked.refuseIfFaulty();
    name(then, change.pattern());
    LocalDate today = LocalDate.now(clock.withZone(zone()));
    LocalDate from = wanted.filter(today::isBefore).orElse(today);
    boolean later = from.isAfter(today) && from.isAfter(row.starts);
    if (later) {
      beginAt(from, then, asked);
    }
    List<LocalDate> wantedDates = openDates(row, then, later ? from : today);
    List<MassRow> ahead = ahead(row, later ? from : LocalDate.EPOCH);
    return new Prepared(
        then,
        from,
        later,
        new CompareDates(then, zone(), change.takeAlong()).with(ahead, wantedDates));
  }

  /**
   * From its first date on or after that one, so that every other week goes on as it was counted.
   */
  private void beginAt(LocalDate from, PatternRow then, Asked asked) {
    endWithItsCount(then);
    LocalDate start = then.starts.isAfter(from) ? then.starts : from;
    then.starts =
        dates.read().between(then, start, start.plusYears(1)).stream().findFirst().orElse(start);
    if (then.ends != null && then.ends.isBefore(then.starts)) {
      asked.fault("from", say("It ends on %s, before the change holds.", then.ends));
      asked.refuseIfFaulty();
    }
  }

  /** A count begins anew with the first date; so it is told by its last date from now on. */
  private void endWithItsCount(PatternRow then) {
    if (then.rrule.contains("COUNT=")) {
      List<LocalDate> all =
          dates.read().between(then, then.starts, then.starts.plusYears(MOST_YEARS_COUNTED));
      then.ends = all.isEmpty() ? then.ends : all.get(all.size() - 1);
    }
  }

  private void name(PatternRow then, SavePattern.Request request) {
    String celebrant = new Asked().text("celebrant", request.celebrant());
    then.celebrantId =
        celebrant.isEmpty()
            ? null
            : known.findCalled(celebrant).map(person -> person.id()).orElse(null);
    then.celebrantLost &= then.celebrantId == null;
  }

  /** Its Masses to come that are of that date or a later one. */
  private List<MassRow> ahead(PatternRow row, LocalDate from) {
    return masses.list(
        "patternId = ?1 and starts >= ?2 and patternDate >= ?3 order by patternDate",
        row.id,
        clock.instant(),
        from);
  }

  /** Dates from that one on, but none whose Mass has begun, or was moved to where it has. */
  private List<LocalDate> openDates(PatternRow row, PatternRow then, LocalDate from) {
    Set<LocalDate> begun =
        masses
            .list(
                "patternId = ?1 and starts < ?2 and patternDate >= ?3",
                row.id,
                clock.instant(),
                from)
            .stream()
            .map(mass -> mass.patternDate)
            .collect(Collectors.toSet());
    return dates.read().between(then, from, horizon.date()).stream()
        .filter(date -> !begun.contains(date))
        .filter(date -> !then.start(date, zone()).isBefore(clock.instant()))
        .toList();
  }

  private ZoneId zone() {
    return cluster.cluster().zone();
  }

  private PatternRow get(String id) {
    return Optional.ofNullable(patterns.findById(Asked.id("pattern", id)))
        .orElseThrow(() -> new Refused(new Refusal.NotThere("pattern", id)));
  }
}
