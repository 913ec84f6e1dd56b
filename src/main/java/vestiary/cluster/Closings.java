package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import vestiary.vesting.ChurchId;

/**
 * Which churches are closed, and from when. A closed church keeps its id, its past Masses and its
 * pieces; no Mass is entered there for that date or a later one.
 */
@ApplicationScoped
@Transactional
public class Closings {

  private final ChurchRows churches;

  Closings(ChurchRows churches) {
    this.churches = churches;
  }

  /** The first date without Mass of each church that is closed or to be closed. */
  public Map<ChurchId, LocalDate> all() {
    return churches.list("closedFrom is not null").stream()
        .collect(Collectors.toMap(row -> new ChurchId(row.id), row -> row.closedFrom));
  }

  /**
   * The churches where something can still be entered on that date or later.
   *
   * @param kept short name of one that is offered in any case, since it stands in the form; may be
   *     empty
   */
  public List<Church> open(List<Church> of, LocalDate on, String kept) {
    Map<ChurchId, LocalDate> closed = all();
    return of.stream()
        .filter(
            church ->
                church.slug().equals(kept)
                    || !closed.containsKey(church.id())
                    || closed.get(church.id()).isAfter(on))
        .toList();
  }

  /** The first date without Mass of one church; empty while it is open. */
  public Optional<LocalDate> find(ChurchId church) {
    return Optional.ofNullable(churches.findById(church.value())).map(row -> row.closedFrom);
  }

  /**
   * Closes a church from that date on.
   *
   * @throws vestiary.problem.Refused if there is none of that short name
   */
  public void close(String slug, LocalDate from) {
    churches.getBySlug(slug).closedFrom = from;
    churches.flush();
  }

  /** Opens it again. */
  public void open(String slug) {
    churches.getBySlug(slug).closedFrom = null;
    churches.flush();
  }

  /** Opens all that were closed, for a demo that is made anew. */
  public void openAll() {
    churches.list("closedFrom is not null").forEach(row -> row.closedFrom = null);
    churches.flush();
  }
}
