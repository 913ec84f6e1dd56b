package vestiary.assigning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.schedule.DatedMass;

/**
 * Who could take the Masses whose celebrant is away, so that one press can name them, and who could
 * lead what is no Mass.
 */
@ApplicationScoped
public class StandIns {

  private final ReadScene read;
  private final ProposeCelebrants propose;
  private final DoneWords done;
  private final CurrentVisitor visitor;

  StandIns(ReadScene read, ProposeCelebrants propose, DoneWords done, CurrentVisitor visitor) {
    this.read = read;
    this.propose = propose;
    this.done = done;
    this.visitor = visitor;
  }

  /**
   * For what is ahead alone; all others stay as they are. None if no celebrant is away, and for a
   * visitor who may not name celebrants. Only to load them a transaction is taken, and none while
   * they are divided.
   *
   * @param last included
   * @param back page that is shown after the press, with the id of what was done as {@code done}
   */
  @Transactional(Transactional.TxType.NEVER)
  public List<StandInsView> on(LocalDate first, LocalDate last, String back) {
    if (!visitor.visitor().may(Action.ENTER_MASSES)) {
      return List.of();
    }
    Scene scene = read.between(first, last);
    ProposeCelebrants.Found found = propose.replace(scene, mass -> isAway(mass, scene));
    List<RiteStandIn> rites = RiteStandIn.all(found);
    return found.question().masses().isEmpty() && rites.isEmpty()
        ? List.of()
        : List.of(StandInWords.view(found, rites, back));
  }

  /**
   * What the last press did.
   *
   * @param id of what was done; {@code null} or empty if nothing was
   */
  public List<Done> done(String id, String back) {
    return done.of(id, back);
  }

  /** Whether whoever of the priests of the scene is named for it is away then. */
  static boolean isAway(DatedMass mass, Scene scene) {
    Instant start = mass.start().toInstant();
    Instant end = mass.end().toInstant();
    Set<PriestId> away =
        scene.priests().stream()
            .filter(priest -> priest.isAway(start, end))
            .map(Priest::id)
            .collect(Collectors.toSet());
    return scene.findNamed(mass).filter(away::contains).isPresent();
  }
}
