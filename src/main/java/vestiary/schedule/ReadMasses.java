package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.calendar.Colour;
import vestiary.calendar.Leave;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassOption;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;
import vestiary.vesting.Ministers;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Presider;

/** The Masses of a span of dates, with all that follows for each from its church's calendar. */
@ApplicationScoped
@Transactional
public class ReadMasses {

  private final MassRows masses;
  private final UnfoldPatterns patterns;
  private final ReadCluster cluster;
  private final ChurchCalendars calendars;
  private final FindPeople people;
  private final CurrentVisitor visitor;
  private final ReadServing serving;

  ReadMasses(
      MassRows masses,
      UnfoldPatterns patterns,
      ReadCluster cluster,
      ChurchCalendars calendars,
      FindPeople people,
      CurrentVisitor visitor,
      ReadServing serving) {
    this.serving = serving;
    this.masses = masses;
    this.patterns = patterns;
    this.cluster = cluster;
    this.calendars = calendars;
    this.people = people;
    this.visitor = visitor;
  }

  /**
   * Masses that begin in the span, by start; cancelled ones left out.
   *
   * @param first first date in the cluster's zone, included
   * @param last last date, included
   */
  public List<DatedMass> between(LocalDate first, LocalDate last) {
    return between(first, last, cluster.cluster(), cluster.churches());
  }

  /** The same for whoever has read the cluster and its churches already. */
  public List<DatedMass> between(
      LocalDate first, LocalDate last, Cluster here, List<Church> churches) {
    patterns.until(last);
    ZoneId zone = here.zone();
    return dated(
        masses.between(
            first.atStartOfDay(zone).toInstant(), last.plusDays(1).atStartOfDay(zone).toInstant()),
        here,
        churches);
  }

  /**
   * What is to be announced of a span: the Masses that begin in it, those that were moved out of
   * it, and those that are cancelled, each told by {@link DatedMass#isMoved} and {@link
   * DatedMass#isCancelled}; by usual start.
   *
   * @param first first date in the cluster's zone, included
   * @param last last date, included
   */
  public List<DatedMass> announced(LocalDate first, LocalDate last) {
    return found(first, last, masses::announced);
  }

  /**
   * Only those of a span that are cancelled or moved, out of it, within it or into it; by usual
   * start.
   */
  public List<DatedMass> departing(LocalDate first, LocalDate last) {
    return found(first, last, masses::departing);
  }

  private List<DatedMass> found(
      LocalDate first, LocalDate last, BiFunction<Instant, Instant, List<MassRow>> rows) {
    patterns.until(last);
    Cluster here = cluster.cluster();
    List<MassRow> found =
        rows.apply(
            first.atStartOfDay(here.zone()).toInstant(),
            last.plusDays(1).atStartOfDay(here.zone()).toInstant());
    return found.isEmpty() ? List.of() : dated(found, here, cluster.churches());
  }

  private List<DatedMass> dated(List<MassRow> rows, Cluster here, List<Church> churches) {
    Reading reading = reading(here, churches, rows);
    return rows.stream().map(reading::dated).toList();
  }

  /**
   * The Mass that an address names, even if it is cancelled.
   *
   * @throws Refused if there is none
   */
  public DatedMass get(String id) {
    MassRow row = masses.findById(Asked.id("Mass", id));
    if (row == null) {
      throw new Refused(new Refusal.NotThere("Mass", id));
    }
    return dated(row);
  }

  /** That of a row, whether it is kept or not. */
  DatedMass dated(MassRow row) {
    return dated(List.of(row), cluster.cluster(), cluster.churches()).get(0);
  }

  /**
   * The Mass as it would be after a change, with all that follows for it from the calendar. Reads
   * no row.
   */
  public DatedMass with(Cluster here, DatedMass mass, MassState change) {
    DatedMass.Chosen chosen = mass.chosen();
    ZonedDateTime start = change.start().atZone(here.zone());
    MassRuling ruling =
        ruling(
            here,
            calendars.of(here, mass.church()),
            start.toLocalDateTime(),
            chosen.kind(),
            chosen.votiveOf(),
            Term.find(Leave.class, chosen.leave()).orElse(Leave.NONE));
    MassOption option = ruling.find(chosen.celebration()).orElse(ruling.options().get(0));
    Ministers ministers = mass.ministers();
    return new DatedMass(
        mass.id(),
        mass.church(),
        start,
        mass.length(),
        ruling,
        option,
        Term.find(Colour.class, change.colour()).orElse(option.colours().get(0)),
        mass.celebrants(),
        mass.named(),
        new Ministers(
            ministers.presider(),
            ministers.concelebrants(),
            ministers.deacons(),
            change.brings().stream().map(BringsValue::toBrings).toList(),
            ministers.further(),
            ministers.also()),
        chosen.in(change.colour()),
        mass.usual(),
        mass.takenOver(),
        mass.serving());
  }

  /**
   * What the norms say of a Mass at that church and time, whether it is entered or not.
   *
   * @param kind as the API writes it, or "" to let the hour decide
   */
  public MassRuling ruling(
      Church church, LocalDateTime start, String kind, String votiveOf, Leave leave) {
    Cluster here = cluster.cluster();
    return ruling(here, calendars.of(here, church), start, kind, votiveOf, leave);
  }

  /** The same by a calendar that is known already. */
  static MassRuling ruling(
      Cluster cluster,
      LiturgicalCalendar calendar,
      LocalDateTime start,
      String kind,
      String votiveOf,
      Leave leave) {
    MassKind said = Term.find(MassKind.class, kind).orElseGet(() -> calendar.kindAt(start));
    return calendar.ruling(start, said, subject(votiveOf), leave);
  }

  /** People write "the Holy Spirit"; the calendar knows holy-spirit. */
  private static String subject(String votiveOf) {
    return votiveOf
        .strip()
        .toLowerCase(Locale.ROOT)
        .replaceFirst("^the ", "")
        .replaceAll("[^a-z0-9]+", "-");
  }

  private Reading reading(Cluster here, List<Church> churches, List<MassRow> rows) {
    Map<UUID, Person> known = people.byId();
    return new Reading(
        here,
        churches.stream().collect(Collectors.toMap(c -> c.id().value(), c -> c)),
        known,
        serving.at(rows.stream().map(row -> row.id).filter(Objects::nonNull).toList(), known),
        visitor.visitor().may(Action.SEE_INTENTIONS));
  }

  /** What is needed to make a Mass of its row, loaded once for many. */
  private final class Reading {

    private final Cluster cluster;
    private final Map<UUID, Church> churches;
    private final Map<UUID, Person> people;
    private final Map<UUID, List<WhoServes>> serving;
    private final boolean showsIntentions;

    Reading(
        Cluster cluster,
        Map<UUID, Church> churches,
        Map<UUID, Person> people,
        Map<UUID, List<WhoServes>> serving,
        boolean showsIntentions) {
      this.serving = serving;
      this.showsIntentions = showsIntentions;
      this.cluster = cluster;
      this.churches = churches;
      this.people = people;
    }

    DatedMass dated(MassRow row) {
      Church church = churches.get(row.churchId);
      ZonedDateTime start = row.starts.atZone(cluster.zone());
      MassRuling ruling =
          ruling(
              cluster,
              calendars.of(cluster, church),
              start.toLocalDateTime(),
              row.kind,
              row.votiveOf,
              Term.find(Leave.class, row.leave).orElse(Leave.NONE));
      MassOption option = ruling.find(row.celebration).orElse(ruling.options().get(0));
      Colour colour = Term.find(Colour.class, row.colour).orElse(option.colours().get(0));
      List<Person> celebrants =
          Optional.ofNullable(row.celebrantId).map(people::get).stream().toList();
      List<WhoServes> named = row.id == null ? List.of() : serving.getOrDefault(row.id, List.of());
      return new DatedMass(
          new MassId(row.id),
          church,
          start,
          Duration.ofMinutes(row.minutes),
          ruling,
          option,
          colour,
          celebrants,
          Stream.of(row.namedIds).map(people::get).filter(Objects::nonNull).toList(),
          ministers(row, celebrants, named),
          chosen(row),
          usual(row, start, church),
          takenOver(row),
          named);
    }

    private Usual usual(MassRow row, ZonedDateTime start, Church church) {
      return row.usualStarts == null
          ? new Usual(false, start, church)
          : new Usual(
              true, row.usualStarts.atZone(cluster.zone()), churches.get(row.usualChurchId));
    }

    /** One that was cancelled itself afterwards sends nobody there any more. */
    private List<TakenOver> takenOver(MassRow row) {
      return Optional.ofNullable(row.takenOverBy)
          .map(masses::findById)
          .filter(other -> !other.cancelled)
          .map(this::toTakenOver)
          .stream()
          .toList();
    }

    private TakenOver toTakenOver(MassRow row) {
      Church church = churches.get(row.churchId);
      ZonedDateTime start = row.starts.atZone(cluster.zone());
      LiturgicalCalendar calendar = calendars.of(cluster, church);
      return new TakenOver(
          new MassId(row.id),
          church,
          start,
          Term.find(MassKind.class, row.kind)
              .orElseGet(() -> calendar.kindAt(start.toLocalDateTime())));
    }

    private static Ministers ministers(
        MassRow row, List<Person> celebrants, List<WhoServes> named) {
      return new Ministers(
          presider(row, celebrants),
          row.concelebrants,
          row.deacons,
          row.brings.stream().map(BringsValue::toBrings).toList(),
          AtLeastNamed.of(row.ministers.stream().map(MinistersValue::toMinisters).toList(), named),
          Stream.of(row.also)
              .map(kind -> Term.find(PieceKind.class, kind).orElseThrow())
              .collect(Collectors.toUnmodifiableSet()));
    }

    private static Presider presider(MassRow row, List<Person> celebrants) {
      if (row.bishop || celebrants.stream().anyMatch(p -> p.role() == PersonRole.BISHOP)) {
        return Presider.BISHOP;
      }
      return celebrants.stream().anyMatch(p -> p.role() == PersonRole.DEACON)
          ? Presider.DEACON
          : Presider.PRIEST;
    }

    private DatedMass.Chosen chosen(MassRow row) {
      return new DatedMass.Chosen(
          row.kind,
          row.votiveOf,
          row.leave,
          row.celebration,
          row.colour,
          row.setOutMinutes == null ? -1 : row.setOutMinutes,
          row.note,
          showsIntentions ? row.intention : "",
          row.language,
          row.patternId != null,
          row.cancelled,
          row.bishop,
          row.celebrantLost,
          row.version);
    }
  }
}
