package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.pool.ReadTaken;
import vestiary.pool.SetAside;
import vestiary.vesting.MassId;

/**
 * Makes the Masses of a pattern what it is to have; whoever holds something for one hears of it.
 */
@ApplicationScoped
class ApplyEffects {

  private final MassRows masses;
  private final ReadCluster cluster;
  private final ReadTaken taken;
  private final Event<MassMoved> moved;

  ApplyEffects(MassRows masses, ReadCluster cluster, ReadTaken taken, Event<MassMoved> moved) {
    this.masses = masses;
    this.cluster = cluster;
    this.taken = taken;
    this.moved = moved;
  }

  @Transactional(Transactional.TxType.MANDATORY)
  void apply(List<Effect> effects, PatternRow pattern) {
    ZoneId zone = cluster.cluster().zone();
    Set<MassId> aside = aside(of(effects, Effect.Kind.GOES));
    effects.forEach(effect -> place(effect, pattern, zone));
    masses.flush();
    of(effects, Effect.Kind.MOVES).forEach(mass -> moved.fire(new MassMoved(id(mass), false)));
    of(effects, Effect.Kind.GOES).forEach(mass -> withdraw(mass, aside));
    masses.flush();
  }

  private void place(Effect effect, PatternRow pattern, ZoneId zone) {
    MassRow mass = effect.mass();
    switch (effect.kind()) {
      case COMES -> masses.persist(pattern.on(effect.date(), zone));
      case GOES -> mass.detach();
      case STAYS -> stay(mass, effect, pattern, zone);
      default -> {
        pattern.place(mass, effect.date(), zone);
        if (!mass.touched) {
          pattern.yieldTo(mass);
        }
      }
    }
  }

  /** Left as it is; the pattern still has that date, or has it no longer. */
  private static void stay(MassRow mass, Effect effect, PatternRow pattern, ZoneId zone) {
    if (effect.isOfPattern()) {
      pattern.claim(mass, effect.date(), zone);
    } else {
      mass.detach();
    }
  }

  /**
   * One for which something was set aside is kept as cancelled, so that its history has a place.
   */
  private void withdraw(MassRow mass, Set<MassId> aside) {
    moved.fire(new MassMoved(id(mass), true));
    if (aside.contains(id(mass))) {
      mass.giveWayTo(null);
    } else {
      masses.delete(mass);
    }
  }

  private Set<MassId> aside(Stream<MassRow> going) {
    List<MassId> ids = going.map(ApplyEffects::id).toList();
    Set<MassId> found = new HashSet<>();
    taken.forMasses(ids).setAside().stream().map(SetAside::masses).forEach(found::addAll);
    return found;
  }

  private static Stream<MassRow> of(List<Effect> effects, Effect.Kind kind) {
    return effects.stream().filter(effect -> effect.kind() == kind).map(Effect::mass);
  }

  private static MassId id(MassRow mass) {
    return new MassId(mass.id);
  }
}
