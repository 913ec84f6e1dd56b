package vestiary.remedy;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.acceptance.AcceptedStep;
import vestiary.planning.SpanToCheck;
import vestiary.pool.Planned;
import vestiary.pool.PlannedWear;
import vestiary.pool.SetAside;
import vestiary.pool.Taken;
import vestiary.schedule.DatedMass;
import vestiary.schedule.MassState;
import vestiary.vesting.MassId;
import vestiary.vesting.Wearer;

/**
 * What a remedy changes, row by row, so that it can be tried out, done, and put back.
 *
 * @param added what is planned
 * @param dropped what was planned for a Mass as it was
 * @param moves what of Masses is changed
 * @param accepted lawful substitutes
 * @param released what was set aside
 */
record Deed(
    Planned added,
    List<PlannedWear> dropped,
    List<Move> moves,
    List<AcceptedStep> accepted,
    List<SetAside> released) {

  /** Nothing: for advice. */
  static final Deed NONE = new Deed(Planned.NOTHING, List.of(), List.of(), List.of(), List.of());

  Deed {
    dropped = List.copyOf(dropped);
    moves = List.copyOf(moves);
    accepted = List.copyOf(accepted);
    released = List.copyOf(released);
  }

  /** A Mass before and after. */
  record Move(MassState before, MassState after) {}

  boolean isNothing() {
    return equals(NONE);
  }

  /**
   * The same with the hour, and the name of who takes the substitute; the first, if there are
   * several.
   */
  Deed by(String person, Instant now) {
    if (accepted.isEmpty()) {
      return this;
    }
    Wearer first = accepted.get(0).wearer();
    return new Deed(
        added,
        dropped,
        moves,
        accepted.stream()
            .map(one -> one.by(one.wearer().equals(first) ? person : "", now))
            .toList(),
        released);
  }

  /** The same, whatever is planned left aside. */
  Deed withoutPlanned() {
    return new Deed(Planned.NOTHING, List.of(), moves, accepted, released);
  }

  /** The span as it would be; Masses that change are worked out by {@code dated}. */
  SpanToCheck on(SpanToCheck span, DatedBy dated) {
    Map<MassId, MassState> changed =
        moves.stream().collect(Collectors.toMap(m -> m.after().mass(), Move::after));
    Set<PlannedWear> gone = new HashSet<>(dropped);
    List<PlannedWear> planned =
        Stream.concat(
                span.taken().planned().stream().filter(one -> !gone.contains(one)),
                added.worn().stream())
            .toList();
    List<SetAside> aside = new ArrayList<>(span.taken().setAside());
    aside.removeAll(released);
    return span.with(
        span.masses().stream()
            .map(m -> changed.containsKey(m.id()) ? dated.apply(m, changed.get(m.id())) : m)
            .toList(),
        new Taken(planned, aside),
        Stream.concat(span.accepted().stream(), accepted.stream()).toList());
  }

  /** Works out a Mass after a change. */
  interface DatedBy {
    DatedMass apply(DatedMass mass, MassState change);
  }
}
