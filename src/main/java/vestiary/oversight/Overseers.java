package vestiary.oversight;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Whom the present cluster lets look in. */
@ApplicationScoped
public class Overseers {

  private static final int LONGEST_CODE = 60;

  private final OversightRows rows;
  private final CurrentCluster current;
  private final Clusters clusters;
  private final Clock clock;

  Overseers(OversightRows rows, CurrentCluster current, Clusters clusters, Clock clock) {
    this.rows = rows;
    this.current = current;
    this.clusters = clusters;
    this.clock = clock;
  }

  /**
   * One who may look in.
   *
   * @param id of the leave, not of the person
   * @param name as his own cluster has it; empty if nobody of that id is let in there any more
   * @param home what his own cluster is called
   */
  record Overseer(UUID id, UUID user, String name, String home) {}

  /** All of them. */
  @Transactional
  List<Overseer> all() {
    return rows.into(current.id()).stream()
        .map(
            row ->
                new Overseer(
                    row.id,
                    row.overseerId,
                    name(row.homeId, row.overseerId),
                    clusters.named(row.homeId).name()))
        .toList();
  }

  /** What they are called, for whoever knows them by id. */
  @Transactional
  public Map<UUID, String> names() {
    return all().stream()
        .filter(one -> !one.name().isEmpty())
        .collect(Collectors.toMap(Overseer::user, Overseer::name));
  }

  /**
   * Lets somebody of another cluster look in.
   *
   * @param code as he handed it on
   * @return the id of the leave
   * @throws Refused if it is nobody's, or one of our own
   */
  @Transactional
  UUID letIn(String code) {
    Asked asked = new Asked();
    String typed = asked.needed("code", code, LONGEST_CODE);
    asked.refuseIfFaulty();
    OverseerCode known =
        OverseerCode.parse(typed)
            .filter(c -> clusters.find(c.home().toString()).isPresent())
            .filter(c -> !name(c.home(), c.user()).isEmpty())
            .orElseThrow(
                () ->
                    new Refused(
                        Refusal.Unfit.of(
                            "code",
                            say("This code is nobody's. Ask for it again, and copy it whole."))));
    if (known.home().equals(current.id())) {
      throw new Refused(
          Refusal.Unfit.of(
              "code",
              say("This is somebody of this cluster; what he may do is said by his role.")));
    }
    return rows.find(current.id(), known.user())
        .map(row -> row.id)
        .orElseGet(() -> enter(known.home(), known.user()));
  }

  /** Lets somebody look in who is known already. */
  UUID enter(UUID home, UUID user) {
    OversightRow row = new OversightRow();
    row.clusterId = current.id();
    row.homeId = home;
    row.overseerId = user;
    row.grantedAt = clock.instant();
    rows.persistAndFlush(row);
    return row.id;
  }

  /**
   * Takes the leave back; from the next request on he is out.
   *
   * @throws Refused if the present cluster gave none such
   */
  @Transactional
  void takeBack(String id) {
    if (!rows.forget(current.id(), Asked.id("overseer", id))) {
      throw new Refused(new Refusal.NotThere("overseer", id));
    }
  }

  private String name(UUID home, UUID user) {
    return clusters.userNamed(home, user).orElse("");
  }
}
