package vestiary.asking;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.people.FindPeople;
import vestiary.people.Person;

/** Who was asked for what. */
@ApplicationScoped
@Transactional
public class ReadAskings {

  private static final String ERASED = "somebody";

  private final AskingRows askings;
  private final FindPeople people;

  ReadAskings(AskingRows askings, FindPeople people) {
    this.askings = askings;
    this.people = people;
  }

  /** Everybody who was asked for a trip, the first asked first. */
  public List<Asking> ofTrip(UUID trip) {
    return told(askings.ofTrip(trip));
  }

  /** The same of several trips. */
  public List<Asking> ofTrips(Collection<UUID> trips) {
    return told(askings.ofTrips(trips));
  }

  /** Askings for trips that leave in the half-open span, by the hour of leaving. */
  public List<Asking> leavingBetween(Instant from, Instant until) {
    return told(askings.leavingBetween(from, until));
  }

  private List<Asking> told(List<AskingRow> rows) {
    if (rows.isEmpty()) {
      return List.of();
    }
    Map<UUID, Person> known = people.byId();
    return rows.stream().map(row -> row.toAsking(name(known.get(row.personId)))).toList();
  }

  private static String name(Person person) {
    return person == null ? ERASED : person.calledName();
  }
}
