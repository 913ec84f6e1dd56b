package vestiary.schedule;

import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.people.ForgetPerson;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.people.SavePerson;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;

/** Enters a Mass or other liturgy, changes one, moves it. */
@ApplicationScoped
@Transactional
public class SaveMass {

  /** Nobody who comes on Sunday is told to come back a fortnight later. */
  private static final Duration FARTHEST = Duration.ofDays(7);

  private final MassRows masses;
  private final ReadCluster cluster;
  private final FillMass fill;
  private final SavePerson people;
  private final UnfoldPatterns patterns;
  private final CurrentVisitor visitor;
  private final Event<MassMoved> moved;
  private final ReadSurroundings surroundings;

  SaveMass(
      MassRows masses,
      ReadCluster cluster,
      FillMass fill,
      SavePerson people,
      UnfoldPatterns patterns,
      CurrentVisitor visitor,
      Event<MassMoved> moved,
      ReadSurroundings surroundings) {
    this.surroundings = surroundings;
    this.moved = moved;
    this.visitor = visitor;
    this.patterns = patterns;
    this.masses = masses;
    this.cluster = cluster;
    this.fill = fill;
    this.people = people;
  }

  /**
   * A Mass as it was typed; what is {@code null} or blank is left to the calendar or the usual.
   *
   * @param church by short name
   * @param start as in 2026-12-08T18:30, with or without an offset
   * @param minutes 5 to 360; 60 on Sundays and holy days, else 30
   * @param named concelebrants and deacons who are known by name, no more than there are of both
   * @param bishop whether a bishop presides; a celebrant who is known as one need not be said so
   * @param also what whoever presides puts on besides: cope, humeral-veil
   * @param language BCP 47, one of the cluster's; the first of them
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
      List<String> named,
      List<BringsValue> brings,
      Boolean bishop,
      List<MinistersValue> ministers,
      List<String> also,
      Integer setOutMinutes,
      String note,
      String intention,
      String language,
      Integer version) {}

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    try {
      fill.fill(new MassRow(), request, asked, surroundings.forOne());
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
  public void change(String id, Request request) {
    MassRow row = get(id);
    if (request.version() != null && request.version() != row.version) {
      throw new Refused(new Refusal.Outdated("this Mass"));
    }
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, row.churchId);
    row.touched = true;
    Stay before = Stay.of(row);
    keep(row, request);
    masses.flush();
    if (!before.equals(Stay.of(row))) {
      moved.fire(new MassMoved(new MassId(row.id), false));
    }
  }

  /** Where it is said, when, and for how long. */
  private record Stay(UUID church, Instant start, int minutes) {
    static Stay of(MassRow row) {
      return new Stay(row.churchId, row.starts, row.minutes);
    }
  }

  /**
   * Enters the Mass, or changes the one at the same church and time; so a list can be sent twice.
   *
   * @param replaces local times of that day's Masses in the same church that it takes the place of;
   *     where there is none at such a time, nothing is asked
   */
  public void enterOrChange(Request request, List<LocalTime> replaces) {
    MassRow given = new MassRow();
    Asked asked = new Asked();
    fill.fill(given, request, asked, surroundings.forOne());
    asked.refuseIfFaulty();
    ZonedDateTime start = given.starts.atZone(cluster.cluster().zone());
    patterns.until(start.toLocalDate());
    List<MassRow> replaced =
        replaces.stream()
            .map(time -> start.toLocalDate().atTime(time).atZone(start.getZone()).toInstant())
            .filter(hour -> !hour.equals(given.starts))
            .flatMap(hour -> masses.findAt(given.churchId, hour).stream())
            .toList();
    MassRow row = masses.findAt(given.churchId, given.starts).orElse(given);
    row.touched = true;
    keep(row, request);
    masses.persist(row);
    replaced.forEach(other -> other.giveWayTo(row.id));
  }

  /** Takes a Mass off the schedule; {@link #restore} brings it back. */
  public void cancel(String id) {
    cancel(id, "");
  }

  /**
   * Takes a Mass off the schedule for the sake of another, where everybody goes instead.
   *
   * @param takenOverBy id of the other Mass, or "" if it is simply not said
   * @throws Refused if either is not there, or the other is this one or over when this one begins
   */
  public void cancel(String id, String takenOverBy) {
    MassRow row = get(id);
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, row.churchId);
    row.giveWayTo(takenOverBy.isBlank() ? null : instead(row, get(takenOverBy)));
    masses.flush();
    moved.fire(new MassMoved(new MassId(row.id), true));
  }

  private static UUID instead(MassRow row, MassRow other) {
    if (other.id.equals(row.id)
        || Duration.between(row.starts, other.starts).abs().compareTo(FARTHEST) > 0) {
      throw new Refused(
          new Refusal.AgainstRule(
              "takenOverBy",
              word(
                  "People can be sent to another Mass within a week, not to this one itself or to one farther away. Choose another.")));
    }
    return other.id;
  }

  /** Puts a cancelled Mass back. */
  public void restore(String id) {
    MassRow row = masses.findById(Asked.id("Mass", id));
    if (row == null) {
      throw new Refused(new Refusal.NotThere("Mass", id));
    }
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, row.churchId);
    row.cancelled = false;
    row.takenOverBy = null;
    masses.flush();
  }

  /**
   * Puts a Mass that was moved back to when and where its pattern has it.
   *
   * @throws Refused if there is none of that id, it is cancelled, or no pattern has it
   */
  public void moveBack(String id) {
    MassRow row = get(id);
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, row.churchId);
    if (row.usualStarts == null) {
      throw new Refused(
          new Refusal.AgainstRule(
              "id", word("No regular Mass time has this Mass; give it an hour.")));
    }
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, row.usualChurchId);
    row.starts = row.usualStarts;
    row.churchId = row.usualChurchId;
    masses.flush();
    moved.fire(new MassMoved(new MassId(row.id), false));
  }

  private MassRow get(String id) {
    return Optional.ofNullable(masses.findById(Asked.id("Mass", id)))
        .filter(row -> !row.cancelled)
        .orElseThrow(() -> new Refused(new Refusal.NotThere("Mass", id)));
  }

  private void keep(MassRow row, Request request) {
    keep(row, request, surroundings.forOne(), people::called);
  }

  /**
   * Writes what was asked for into the row, which is kept elsewhere.
   *
   * @param called finds or enters the one who is called so
   */
  void keep(MassRow row, Request request, MassSurroundings here, Function<String, Person> called) {
    Asked asked = new Asked();
    fill.fill(row, request, asked, here);
    asked.refuseIfFaulty();
    row.namedIds =
        AskedNames.of(request.named()).stream()
            .flatMap(name -> meant(name, row.namedIds, called))
            .distinct()
            .toArray(UUID[]::new);
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, row.churchId);
    String celebrant = asked.text("celebrant", request.celebrant());
    if (celebrant.equals(ForgetPerson.NAMELESS)) {
      return;
    }
    row.celebrantId = null;
    if (!celebrant.isEmpty()) {
      Person presides = called.apply(celebrant);
      row.celebrantId = presides.id();
      // What follows from who he is was not chosen: it must not outlast him.
      row.bishop = row.bishop && presides.role() != PersonRole.BISHOP;
      row.celebrantLost = false;
    }
  }

  /**
   * Those who were removed for good have one name between them, which stands for whoever it was.
   */
  private Stream<UUID> meant(String name, UUID[] before, Function<String, Person> called) {
    return name.equals(ForgetPerson.NAMELESS)
        ? people.nameless(List.of(before)).stream()
        : Stream.of(called.apply(name).id());
  }
}
