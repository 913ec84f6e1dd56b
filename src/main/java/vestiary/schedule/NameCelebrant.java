package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;
import vestiary.vesting.Role;

/**
 * Names who celebrates a Mass, and puts back who was named. Vestments of his own that the former
 * celebrant was to bring go with him.
 */
@ApplicationScoped
public class NameCelebrant {

  private final MassRows masses;
  private final CurrentVisitor visitor;

  NameCelebrant(MassRows masses, CurrentVisitor visitor) {
    this.masses = masses;
    this.visitor = visitor;
  }

  /**
   * Names somebody in the present transaction. A Mass that a pattern yielded is left alone by it
   * from then on.
   *
   * @param expected who was named when the person looked; nobody or one
   * @return what was before
   * @throws Refused if the Mass is cancelled, gone, or somebody else is named for it meanwhile
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public CelebrantState name(MassId mass, List<UUID> expected, UUID celebrant) {
    MassRow row = locked(mass.value(), expected);
    CelebrantState before = CelebrantState.of(row);
    row.celebrantId = celebrant;
    row.celebrantLost = false;
    row.brings =
        row.brings.stream().filter(one -> !one.role().equals(Role.PRINCIPAL.id())).toList();
    row.touched = true;
    masses.flush();
    return before;
  }

  /** Whether he is named for it and nobody else; not if it is cancelled or gone. */
  @Transactional(Transactional.TxType.MANDATORY)
  public boolean isNamed(MassId mass, UUID celebrant) {
    return masses
        .findByIdOptional(mass.value())
        .filter(row -> !row.cancelled)
        .filter(row -> CelebrantState.of(row).celebrant().equals(List.of(celebrant)))
        .isPresent();
  }

  /**
   * Puts back what was before.
   *
   * @param since who was named in his place
   * @throws Refused as {@link #name}
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void putBack(CelebrantState before, UUID since) {
    MassRow row = locked(before.mass(), List.of(since));
    row.celebrantId = before.celebrant().stream().findFirst().orElse(null);
    row.celebrantLost = before.lost();
    row.brings = before.brings();
    masses.flush();
  }

  private MassRow locked(UUID id, List<UUID> expected) {
    MassRow row =
        Optional.ofNullable(masses.findById(id, LockModeType.PESSIMISTIC_WRITE))
            .filter(found -> !found.cancelled)
            .orElseThrow(NameCelebrant::changed);
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, row.churchId);
    if (!CelebrantState.of(row).celebrant().equals(expected)) {
      throw changed();
    }
    return row;
  }

  private static Refused changed() {
    return new Refused(
        new Refusal.Taken(
            "",
            say(
                "A Mass was cancelled, or somebody else is named for it meanwhile. Nothing was changed now; look again.")));
  }
}
