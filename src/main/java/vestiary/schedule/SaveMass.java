package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import vestiary.calendar.Colour;
import vestiary.calendar.Leave;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.people.SavePerson;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;

/** Enters a Mass or other liturgy, changes one, moves it. */
@ApplicationScoped
public class SaveMass {

  private static final int SHORTEST = 5;
  private static final int LONGEST = 360;
  private static final int MOST_PEOPLE = 200;
  private static final int LONGEST_SET_OUT = 240;
  private static final int SUNDAY_MINUTES = 60;
  private static final int WEEKDAY_MINUTES = 30;

  private final MassRows masses;
  private final ReadCluster cluster;
  private final ReadMasses read;
  private final SavePerson people;
  private final UnfoldPatterns patterns;

  SaveMass(
      MassRows masses,
      ReadCluster cluster,
      ReadMasses read,
      SavePerson people,
      UnfoldPatterns patterns) {
    this.patterns = patterns;
    this.masses = masses;
    this.cluster = cluster;
    this.read = read;
    this.people = people;
  }

  /**
   * A Mass as it was typed; what is {@code null} or blank is left to the calendar or the usual.
   *
   * @param church by short name
   * @param start as in 2026-12-08T18:30, with or without an offset
   * @param minutes 5 to 360; 60 on Sundays and holy days, else 30
   * @param version of the Mass that the person looked at, or {@code null} to change it anyway
   */
  public record Request(
      String church,
      String start,
      Integer minutes,
      String mass,
      String votiveOf,
      String leave,
      String celebration,
      String colour,
      String celebrant,
      Integer concelebrants,
      Integer deacons,
      List<BringsValue> brings,
      Integer setOutMinutes,
      String note,
      String intention,
      Integer version) {}

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    try {
      fill(new MassRow(), request, asked);
      return asked.faults();
    } catch (Refused refused) {
      return List.of(new FieldFault("start", refused.refusal().detail()));
    }
  }

  /**
   * Enters a Mass.
   *
   * @return its id
   * @throws Refused if a field is unfit or a rule stands against it
   */
  @Transactional
  public String enter(Request request) {
    MassRow row = new MassRow();
    row.touched = true;
    keep(row, request);
    masses.persistAndFlush(row);
    return row.id.toString();
  }

  /**
   * Changes or moves a Mass; one that a pattern yielded is left alone by it from then on.
   *
   * @throws Refused if there is none of that id, it was changed meanwhile, or as {@link #enter}
   */
  @Transactional
  public void change(String id, Request request) {
    MassRow row = get(id);
    if (request.version() != null && request.version() != row.version) {
      throw new Refused(new Refusal.Outdated("this Mass"));
    }
    row.touched = true;
    keep(row, request);
    masses.flush();
  }

  /**
   * Enters the Mass, or changes the one at the same church and time; so a list can be sent twice.
   *
   * @param replaces local times of that day's Masses in the same church that it takes the place of;
   *     where there is none at such a time, nothing is asked
   */
  @Transactional
  public void enterOrChange(Request request, List<LocalTime> replaces) {
    MassRow given = new MassRow();
    Asked asked = new Asked();
    fill(given, request, asked);
    asked.refuseIfFaulty();
    ZonedDateTime start = given.starts.atZone(cluster.cluster().zone());
    patterns.until(start.toLocalDate());
    replaces.stream()
        .map(time -> start.toLocalDate().atTime(time).atZone(start.getZone()).toInstant())
        .filter(replaced -> !replaced.equals(given.starts))
        .flatMap(replaced -> masses.findAt(given.churchId, replaced).stream())
        .forEach(
            replaced -> {
              replaced.cancelled = true;
              replaced.touched = true;
            });
    MassRow row = masses.findAt(given.churchId, given.starts).orElse(given);
    row.touched = true;
    keep(row, request);
    masses.persist(row);
  }

  /** Takes a Mass off the schedule; {@link #restore} brings it back. */
  @Transactional
  public void cancel(String id) {
    MassRow row = get(id);
    row.cancelled = true;
    row.touched = true;
    masses.flush();
  }

  /** Puts a cancelled Mass back. */
  @Transactional
  public void restore(String id) {
    MassRow row = masses.findById(Asked.id("Mass", id));
    if (row == null) {
      throw new Refused(new Refusal.NotThere("Mass", id));
    }
    row.cancelled = false;
    masses.flush();
  }

  private MassRow get(String id) {
    return Optional.ofNullable(masses.findById(Asked.id("Mass", id)))
        .filter(row -> !row.cancelled)
        .orElseThrow(() -> new Refused(new Refusal.NotThere("Mass", id)));
  }

  private void keep(MassRow row, Request request) {
    Asked asked = new Asked();
    fill(row, request, asked);
    asked.refuseIfFaulty();
    String celebrant = asked.text("celebrant", request.celebrant());
    row.celebrantId = celebrant.isEmpty() ? null : people.called(celebrant).id();
  }

  private void fill(MassRow row, Request request, Asked asked) {
    Cluster here = cluster.cluster();
    row.starts = StartTime.parse(request.start(), here.zone(), asked);
    row.kind = asked.findTerm(MassKind.class, "mass", request.mass()).map(Term::id).orElse("");
    row.leave = asked.findTerm(Leave.class, "leave", request.leave()).map(Term::id).orElse("");
    row.colour = asked.findTerm(Colour.class, "colour", request.colour()).map(Term::id).orElse("");
    row.votiveOf = asked.text("votiveOf", request.votiveOf());
    row.celebration = asked.text("celebration", request.celebration());
    row.concelebrants = asked.whole("concelebrants", request.concelebrants(), 0, MOST_PEOPLE, 0);
    row.deacons = asked.whole("deacons", request.deacons(), 0, MOST_PEOPLE, 0);
    row.setOutMinutes =
        request.setOutMinutes() == null
            ? null
            : Integer.valueOf(
                asked.whole("setOutMinutes", request.setOutMinutes(), 1, LONGEST_SET_OUT, 1));
    row.brings = brings(request.brings(), asked);
    row.note = asked.text("note", request.note());
    row.intention = asked.text("intention", request.intention());
    asked.text("celebrant", request.celebrant());
    row.minutes = asked.whole("minutes", request.minutes(), SHORTEST, LONGEST, SUNDAY_MINUTES);
    String slug = asked.needed("church", request.church(), 40);
    Optional<Church> church = slug.isEmpty() ? Optional.empty() : cluster.findChurch(slug);
    if (church.isEmpty() && !slug.isEmpty()) {
      asked.fault("church", "church \"%s\" is no church of this cluster.".formatted(slug));
    }
    if (church.isPresent() && !asked.isFaulty()) {
      row.churchId = church.get().id().value();
      fitIntoCalendar(row, request, church.get(), here, asked);
    }
  }

  /** What can only be judged once church, time and kind are known. */
  private void fitIntoCalendar(
      MassRow row, Request request, Church church, Cluster here, Asked asked) {
    LocalDateTime start = row.starts.atZone(here.zone()).toLocalDateTime();
    if (row.kind.equals(MassKind.ANTICIPATED.id())
        && start.toLocalTime().isBefore(here.policies().anticipatedFrom())) {
      throw new Refused(
          new Refusal.AgainstRule(
              "mass",
              "An anticipated Mass begins at %s or later; this one begins at %s. Choose the Mass of the day, or a later hour."
                  .formatted(here.policies().anticipatedFrom(), start.toLocalTime())));
    }
    MassRuling ruling =
        read.ruling(
            church,
            start,
            row.kind,
            row.votiveOf,
            Term.find(Leave.class, row.leave).orElse(Leave.NONE));
    if (!row.celebration.isEmpty() && ruling.find(row.celebration).isEmpty()) {
      asked.fault(
          "celebration",
          "celebration \"%s\" cannot be chosen for this Mass; it can be %s."
              .formatted(
                  row.celebration,
                  ruling.options().stream()
                      .map(o -> o.celebration().id())
                      .collect(Collectors.joining(", "))));
    }
    if (request.minutes() == null && !isOnHolyDay(ruling)) {
      row.minutes = WEEKDAY_MINUTES;
    }
  }

  private static boolean isOnHolyDay(MassRuling ruling) {
    return ruling.day().obligation() || ruling.day().date().getDayOfWeek() == DayOfWeek.SUNDAY;
  }

  private static List<BringsValue> brings(List<BringsValue> given, Asked asked) {
    if (given == null) {
      return List.of();
    }
    return given.stream().map(b -> brings(b, asked)).toList();
  }

  private static BringsValue brings(BringsValue given, Asked asked) {
    Role role = asked.term("brings.role", given == null ? null : given.role(), Role.PRINCIPAL);
    int count =
        asked.whole("brings.count", given == null ? null : given.count(), 1, MOST_PEOPLE, 1);
    List<String> kinds = given == null || given.kinds() == null ? List.of() : given.kinds();
    // An empty word is no kind: kept, it would make the Mass unreadable ever after.
    kinds.forEach(
        k ->
            asked.findTerm(PieceKind.class, "brings.kinds", k == null || k.isBlank() ? "none" : k));
    return new BringsValue(role.id(), count, kinds);
  }
}
