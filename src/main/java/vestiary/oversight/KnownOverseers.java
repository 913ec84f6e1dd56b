package vestiary.oversight;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.access.Elsewhere;
import vestiary.access.Oversees;
import vestiary.access.Visitor;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Answers the door, and tells a user where he may look. */
@ApplicationScoped
class KnownOverseers implements Oversees {

  private final OversightRows rows;
  private final CurrentCluster current;
  private final Elsewhere elsewhere;
  private final Clusters clusters;

  KnownOverseers(
      OversightRows rows, CurrentCluster current, Elsewhere elsewhere, Clusters clusters) {
    this.rows = rows;
    this.current = current;
    this.elsewhere = elsewhere;
    this.clusters = clusters;
  }

  /**
   * Where somebody may look.
   *
   * @param leave id of the leave
   */
  record Place(UUID leave, Clusters.Named cluster) {}

  @Override
  public Optional<Visitor.Overseer> find(Visitor.User user, UUID wanted) {
    UUID home = current.id();
    boolean isLet =
        elsewhere
            .call(wanted, () -> rows.find(wanted, user.id()).filter(r -> r.homeId.equals(home)))
            .isPresent();
    return isLet
        ? Optional.of(new Visitor.Overseer(user.id(), user.name(), home, user.looksOnly()))
        : Optional.empty();
  }

  /** All the places of somebody, wherever he looks at present. */
  List<Place> of(Visitor visitor) {
    if (visitor instanceof Visitor.User user) {
      return places(current.id(), user.id());
    }
    if (visitor instanceof Visitor.Overseer overseer) {
      return places(overseer.home(), overseer.id());
    }
    return List.of();
  }

  /**
   * The cluster that a leave is for.
   *
   * @throws Refused if the visitor has none such
   */
  UUID get(Visitor visitor, String leave) {
    UUID id = Asked.id("cluster", leave);
    return of(visitor).stream()
        .filter(place -> place.leave().equals(id))
        .findFirst()
        .orElseThrow(() -> new Refused(new Refusal.NotThere("cluster", leave)))
        .cluster()
        .id();
  }

  private List<Place> places(UUID home, UUID user) {
    return elsewhere.call(home, () -> rows.of(home, user)).stream()
        .map(row -> new Place(row.id, clusters.named(row.clusterId)))
        .toList();
  }
}
