package vestiary.movement;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.asking.Asking;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.plan.PlanResult;
import vestiary.plan.TripView;
import vestiary.plan.TripWords;
import vestiary.pool.ReadPool;

/** What one person carries, or is asked to carry. */
@ApplicationScoped
public class ReadDriving {

  private final ReadErrands errands;
  private final ErrandWords words;
  private final ReadPool pool;
  private final FindPeople people;

  ReadDriving(ReadErrands errands, ErrandWords words, ReadPool pool, FindPeople people) {
    this.errands = errands;
    this.words = words;
    this.pool = pool;
    this.people = people;
  }

  /**
   * Journeys that arrive on these dates, both included, by the hour of leaving: those he was asked
   * for and has not declined, and those that he makes anyway while nobody else is asked.
   */
  @Transactional
  public List<TripView> of(UUID person, LocalDate first, LocalDate last) {
    ReadErrands.Errands found = errands.between(first, last);
    ZoneId zone = found.cluster().zone();
    TripWords trips =
        new TripWords(
            List.copyOf(found.churches().values()),
            pool.pieces(first.atStartOfDay(zone).toInstant()),
            zone);
    return found.errands().stream()
        .filter(one -> isFor(one, person))
        .map(
            one -> trips.view(one.trip()).with(words.inShort(one), "/movements/" + one.trip().id()))
        .toList();
  }

  /** The same journeys as they are kept. */
  @Transactional
  public List<PlanResult.Trip> trips(UUID person, LocalDate first, LocalDate last) {
    return errands.between(first, last).errands().stream()
        .filter(one -> isFor(one, person))
        .map(Errand::trip)
        .toList();
  }

  private boolean isFor(Errand one, UUID person) {
    Optional<Asking> open = one.findOpen();
    return open.isPresent()
        ? open.get().person().contains(person)
        : people.findCalled(one.driver()).map(Person::id).filter(person::equals).isPresent();
  }
}
