package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import vestiary.people.Person;
import vestiary.people.SavePerson;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;

/**
 * Enters and changes many Masses in one transaction, by the same rules as one: what they are held
 * against is read once, and the Masses that are there already are read once.
 */
@ApplicationScoped
@Transactional(Transactional.TxType.MANDATORY)
public class SaveMasses {

  private static final int WRITTEN_AT_ONCE = 1_000;

  private final MassRows masses;
  private final SaveMass one;
  private final FillMass fill;
  private final ReadSurroundings surroundings;
  private final UnfoldPatterns patterns;
  private final SavePerson people;
  private final TypedAgain typed;

  SaveMasses(
      MassRows masses,
      SaveMass one,
      FillMass fill,
      ReadSurroundings surroundings,
      UnfoldPatterns patterns,
      SavePerson people,
      TypedAgain typed) {
    this.typed = typed;
    this.people = people;
    this.masses = masses;
    this.one = one;
    this.fill = fill;
    this.surroundings = surroundings;
    this.patterns = patterns;
  }

  /**
   * Those of a span of dates.
   *
   * @param first first local date on which one of them begins; likewise last, included
   */
  public Lot lot(LocalDate first, LocalDate last) {
    return new Lot(first, last, surroundings.forMany());
  }

  /**
   * A Mass of which no more is known.
   *
   * @param minutes 0 for the usual length
   * @param kind as the API writes it, or "" to let the hour decide
   */
  public static SaveMass.Request request(
      String church, LocalDateTime start, int minutes, String kind) {
    return new SaveMass.Request(
        church,
        start.toString(),
        minutes == 0 ? null : Integer.valueOf(minutes),
        kind,
        "",
        "",
        "",
        "",
        "",
        0,
        0,
        List.of(),
        List.of(),
        false,
        List.of(),
        List.of(),
        null,
        "",
        "",
        "",
        null);
  }

  /** Masses that are held against the same, in the transaction that began it. */
  public final class Lot {
    private final LocalDate first;
    private final LocalDate last;
    private final MassSurroundings here;
    private final Map<String, Person> called = new HashMap<>();
    private Map<Place, MassRow> standing;
    private int entered;

    private Lot(LocalDate first, LocalDate last, MassSurroundings here) {
      this.first = first;
      this.last = last;
      this.here = here;
    }

    /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
    public List<FieldFault> findFaults(SaveMass.Request request) {
      Asked asked = new Asked();
      try {
        fill.fill(new MassRow(), request, asked, here);
        return asked.faults();
      } catch (Refused refused) {
        return List.of(new FieldFault("start", refused.refusal().detail()));
      }
    }

    /**
     * Enters the Mass, or changes the one at the same church and time.
     *
     * @param replaces as {@link SaveMass#enterOrChange} has it
     * @return its id
     */
    public UUID enterOrChange(SaveMass.Request request, List<LocalTime> replaces) {
      MassRow given = new MassRow();
      one.keep(given, request, here, this::called);
      MassRow before = standing().get(new Place(given.churchId, given.starts));
      MassRow row = before == null ? given : before;
      row.touched = true;
      if (before == null) {
        masses.persist(row);
        standing().put(new Place(row.churchId, row.starts), row);
        writeNowAndThen();
      } else {
        one.keep(row, request, here, this::called);
      }
      ZonedDateTime start = row.starts.atZone(here.cluster().zone());
      replaces.stream()
          .map(time -> start.toLocalDate().atTime(time).atZone(start.getZone()).toInstant())
          .filter(hour -> !hour.equals(row.starts))
          .flatMap(
              hour ->
                  Optional.ofNullable(standing().remove(new Place(row.churchId, hour))).stream())
          .forEach(other -> other.giveWayTo(row.id));
      return row.id;
    }

    /**
     * Enters the Mass; one that stands at the same church and time already is left as it is.
     *
     * @return its id
     */
    public UUID enterOrFind(SaveMass.Request request) {
      MassRow given = new MassRow();
      one.keep(given, request, here, this::called);
      MassRow before = standing().get(new Place(given.churchId, given.starts));
      return before == null ? enterOrChange(request, List.of()) : before.id;
    }

    /**
     * Changes where and when a Mass is said, how long and of which kind; whatever else was said of
     * it stays. A Mass that is cancelled or gone is left alone.
     */
    public void change(UUID id, SaveMass.Request request) {
      masses
          .findByIdOptional(id)
          .filter(row -> !row.cancelled)
          .ifPresent(row -> one.change(id.toString(), typed.retimed(row, request)));
    }

    /** Takes a Mass off the schedule, unless that was done already. */
    public void cancel(UUID id) {
      masses
          .findByIdOptional(id)
          .filter(row -> !row.cancelled)
          .ifPresent(row -> one.cancel(id.toString()));
    }

    /** What is written at the end alone leaves whoever waits without a sign. */
    private void writeNowAndThen() {
      if (++entered % WRITTEN_AT_ONCE == 0) {
        masses.flush();
      }
    }

    private Person called(String name) {
      return called.computeIfAbsent(name, people::called);
    }

    /** By church and start, those of patterns too. */
    private Map<Place, MassRow> standing() {
      if (standing == null) {
        patterns.until(last);
        standing = new HashMap<>();
        Instant from = first.atStartOfDay(here.cluster().zone()).toInstant();
        Instant until = last.plusDays(1).atStartOfDay(here.cluster().zone()).toInstant();
        masses
            .between(from, until)
            .forEach(row -> standing.putIfAbsent(new Place(row.churchId, row.starts), row));
      }
      return standing;
    }
  }

  private record Place(UUID church, Instant start) {}
}
