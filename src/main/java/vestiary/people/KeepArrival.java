package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * Keeps when people come to a Mass from outside. Whoever asks must be one who enters the Masses of
 * that church, which is for pages to see to.
 */
@ApplicationScoped
@Transactional
public class KeepArrival {

  private final ArrivalRows arrivals;

  KeepArrival(ArrivalRows arrivals) {
    this.arrivals = arrivals;
  }

  /** Keeps it instead of what was kept. */
  public void keep(Arrival arrival) {
    ArrivalRow row = arrivals.find(arrival.mass(), arrival.person()).orElseGet(ArrivalRow::new);
    row.massId = arrival.mass();
    row.personId = arrival.person();
    row.arrives = arrival.arrives();
    row.brings = arrival.brings().id();
    arrivals.persistAndFlush(row);
  }

  /** Forgets it; nothing if none is kept. */
  public void forget(UUID mass, UUID person) {
    arrivals.find(mass, person).ifPresent(arrivals::delete);
  }

  /** Those that happen in that time; {@code until} is not included. */
  public List<Arrival> between(Instant from, Instant until) {
    return arrivals
        .list("arrives >= ?1 and arrives < ?2 order by arrives, id", from, until)
        .stream()
        .map(ArrivalRow::toArrival)
        .toList();
  }
}
