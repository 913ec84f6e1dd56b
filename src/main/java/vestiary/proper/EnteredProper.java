package vestiary.proper;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import vestiary.calendar.LocalName;
import vestiary.calendar.Proper;
import vestiary.calendar.ProperPlace;
import vestiary.vesting.ChurchId;

/**
 * What somebody entered of one celebration, for all churches of the cluster or for some. Titles and
 * dedications are no part of it; they stand with their churches.
 *
 * @param id short name in addresses and lists; the celebration's own where this brings it
 * @param celebration id of the celebration that it is about
 * @param propers its place in the calendar, the Sunday it is taken to, or both; or the date it has
 *     in one year; 1 or 2
 * @param everywhere whether it binds all churches, those to come included
 * @param churches those it binds if not all
 * @param version counts the changes made to it, to notice a lost race
 */
public record EnteredProper(
    String id,
    String celebration,
    List<Proper> propers,
    boolean everywhere,
    List<ChurchId> churches,
    int version) {

  public EnteredProper {
    propers = List.copyOf(propers);
    churches = List.copyOf(churches);
    if (propers.isEmpty()) throw new IllegalArgumentException(id + " says nothing.");
  }

  /** What it says of that kind, if it does. */
  public <T extends Proper> Optional<T> find(Class<T> kind) {
    return propers.stream().filter(kind::isInstance).map(kind::cast).findFirst();
  }

  /** Its place in the table of liturgical days; empty for a Sunday alone and a single date. */
  public Optional<ProperPlace> findPlace() {
    return propers.stream().flatMap(proper -> place(proper).stream()).findFirst();
  }

  /** The day of every year that it sets; empty if it leaves the celebration where it is. */
  public Optional<MonthDay> findDay() {
    return find(Proper.Inscribed.class)
        .map(Proper.Inscribed::day)
        .or(() -> find(Proper.Moved.class).map(Proper.Moved::day));
  }

  /** The name of the celebration that it brings; empty if the calendar has it. */
  public Optional<LocalName> findName() {
    return find(Proper.Inscribed.class).map(Proper.Inscribed::name);
  }

  /** The one year that it holds in; 0 if it holds every year. */
  public int keptYear() {
    return find(Proper.KeptOn.class).map(kept -> kept.date().getYear()).orElse(0);
  }

  public boolean binds(ChurchId church) {
    return everywhere || churches.contains(church);
  }

  /** Whether some church is bound by both. */
  boolean meets(EnteredProper other) {
    return everywhere || other.everywhere || churches.stream().anyMatch(other::binds);
  }

  private static Optional<ProperPlace> place(Proper proper) {
    if (proper instanceof Proper.Inscribed inscribed) return Optional.of(inscribed.place());
    if (proper instanceof Proper.Placed placed) return Optional.of(placed.place());
    if (proper instanceof Proper.Moved moved) return Optional.of(moved.place());
    return Optional.empty();
  }
}
