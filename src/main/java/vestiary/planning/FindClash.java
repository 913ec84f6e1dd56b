package vestiary.planning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Optional;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Finds the clash that a name is of, among those of the day that stands in the name. */
@ApplicationScoped
public class FindClash {

  private final CheckClashes check;

  FindClash(CheckClashes check) {
    this.check = check;
  }

  /** A clash with the days of all its Masses. */
  public record Found(Clash clash, SpanToCheck span) {}

  /**
   * The clash as it stands now; empty if it does not stand any more.
   *
   * @throws Refused if it is not the name of a clash at all
   */
  @Transactional
  public Optional<Found> find(String id) {
    LocalDate date =
        ClashId.findDate(id).orElseThrow(() -> new Refused(new Refusal.NotThere("clash", id)));
    SpanToCheck span = check.load(date, date);
    Optional<Clash> clash = check.in(span).stream().filter(one -> one.id().equals(id)).findFirst();
    return clash.map(
        one -> {
          LocalDate last = one.masses().get(one.masses().size() - 1).date();
          return new Found(one, last.equals(date) ? span : check.load(date, last));
        });
  }
}
