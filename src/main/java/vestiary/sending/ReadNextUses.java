package vestiary.sending;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.pool.PlannedWear;
import vestiary.pool.ReadTaken;
import vestiary.pool.SetAside;
import vestiary.pool.Taken;
import vestiary.schedule.ReadMasses;
import vestiary.vesting.MassId;
import vestiary.vesting.Wearer;

/** For what things are planned or held next. */
@ApplicationScoped
@Transactional
public class ReadNextUses {

  private static final String HELD = "held";

  private final ReadTaken taken;
  private final ReadMasses masses;
  private final Clock clock;

  ReadNextUses(ReadTaken taken, ReadMasses masses, Clock clock) {
    this.taken = taken;
    this.masses = masses;
    this.clock = clock;
  }

  private record Use(String piece, MassId mass, List<Wearer> wearers, Instant from, Instant until) {

    static Use of(PlannedWear one) {
      return new Use(
          one.piece(), one.wearer().mass(), List.of(one.wearer()), one.from(), one.until());
    }

    static Use of(SetAside one) {
      return new Use(one.piece(), one.masses().get(0), List.of(), one.from(), one.until());
    }
  }

  /** Those of the pieces within the time ahead that are not over, each Mass once, by set-out. */
  public List<NextUse> of(Collection<String> pieces, Duration ahead) {
    Map<MassId, Use> byMass = new LinkedHashMap<>();
    uses(ahead)
        .filter(use -> pieces.contains(use.piece()))
        .forEach(use -> byMass.putIfAbsent(use.mass(), use));
    return byMass.values().stream().map(this::next).toList();
  }

  /** All of them by the code of the piece, a piece once for each of its Masses, by set-out. */
  public Map<String, List<NextUse>> all(Duration ahead) {
    Map<String, List<NextUse>> all = new LinkedHashMap<>();
    Map<MassId, NextUse> known = new LinkedHashMap<>();
    uses(ahead)
        .forEach(
            use ->
                all.merge(
                    use.piece(),
                    List.of(
                        known
                            .computeIfAbsent(use.mass(), unknown -> next(use))
                            .wornBy(use.wearers())),
                    (first, more) -> Stream.concat(first.stream(), more.stream()).toList()));
    return all;
  }

  private Stream<Use> uses(Duration ahead) {
    Instant now = clock.instant();
    Taken found = taken.between(now, now.plus(ahead));
    return Stream.concat(
            found.planned().stream().map(Use::of),
            found.setAside().stream()
                .filter(one -> one.word().equals(HELD) && !one.masses().isEmpty())
                .map(Use::of))
        .sorted(Comparator.comparing(Use::from).thenComparing(Use::piece));
  }

  private NextUse next(Use use) {
    return new NextUse(
        masses.get(use.mass().value().toString()), use.wearers(), use.from(), use.until());
  }
}
