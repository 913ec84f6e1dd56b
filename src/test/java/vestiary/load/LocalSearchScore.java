package vestiary.load;

import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Role;

/**
 * The planner's measures for a general planning library, kept up to date piece by piece: what
 * clashes is hard, the rest soft in the order of the planner. What one Mass gets from one church is
 * one carriage.
 */
public class LocalSearchScore
    implements IncrementalScoreCalculator<LocalSearchWeek, BendableLongScore> {

  private record Stay(ChurchId church, Need need, Instant setOut, Instant cleared) {}

  private Situation situation;
  private Map<Piece, List<LocalSearchNeed>> uses;
  private Map<Object, Integer> carriages;
  private long[] soft;
  private long clashes;

  @Override
  public void resetWorkingSolution(LocalSearchWeek week) {
    situation = week.situation();
    uses = new HashMap<>();
    carriages = new HashMap<>();
    soft = new long[Recount.LEVELS];
    clashes = 0;
    situation.span().pieces().forEach(piece -> count(piece, 1));
    week.needs().forEach(this::insert);
  }

  @Override
  public void beforeVariableChanged(Object entity, String variable) {
    retract((LocalSearchNeed) entity);
  }

  @Override
  public void afterVariableChanged(Object entity, String variable) {
    insert((LocalSearchNeed) entity);
  }

  @Override
  public void beforeEntityAdded(Object entity) {}

  @Override
  public void afterEntityAdded(Object entity) {
    insert((LocalSearchNeed) entity);
  }

  @Override
  public void beforeEntityRemoved(Object entity) {
    retract((LocalSearchNeed) entity);
  }

  @Override
  public void afterEntityRemoved(Object entity) {}

  @Override
  public BendableLongScore calculateScore() {
    long[] levels = new long[soft.length];
    for (int level = 0; level < soft.length; level++) {
      levels[level] = -soft[level];
    }
    return BendableLongScore.of(new long[] {-clashes}, levels);
  }

  private void insert(LocalSearchNeed one) {
    serve(one, 1);
    if (one.getPiece() != null) {
      count(one.getPiece(), -1);
      uses.computeIfAbsent(one.getPiece(), unknown -> new ArrayList<>()).add(one);
      count(one.getPiece(), 1);
    }
  }

  private void retract(LocalSearchNeed one) {
    serve(one, -1);
    if (one.getPiece() != null) {
      count(one.getPiece(), -1);
      uses.get(one.getPiece()).remove(one);
      count(one.getPiece(), 1);
    }
  }

  private void serve(LocalSearchNeed one, int sign) {
    Need need = one.need();
    Ask ask = Ask.of(need, situation);
    int depth =
        one.getPiece() == null
            ? ask.depthWithout()
            : ask.depth(one.getPiece(), situation.traits(one.getPiece()));
    if (depth == Ask.NEVER) {
      soft[need.role() == Role.PRINCIPAL ? 0 : need.isMust() ? 1 : 2] += sign;
    } else if (depth > 0) {
      soft[6 - Math.min(3, depth)] += sign;
    }
  }

  /** Adds or takes away what a piece's way through the week comes to. */
  private void count(Piece piece, int sign) {
    List<Stay> stays = new ArrayList<>();
    for (LocalSearchNeed one : uses.getOrDefault(piece, List.of())) {
      Need need = one.need();
      stays.add(new Stay(need.church(), need, need.window().setOut(), need.window().cleared()));
    }
    for (Away away : piece.away()) {
      stays.add(new Stay(piece.home(), null, away.from(), away.until()));
    }
    stays.sort(Comparator.comparing(Stay::setOut).thenComparing(Stay::cleared));
    Stay before = new Stay(piece.home(), null, Instant.MIN, Instant.MIN);
    for (Stay stay : stays) {
      Duration way = situation.span().journeys().find(before.church(), stay.church()).orElseThrow();
      boolean clash = !follows(before, stay, way);
      clashes += clash ? sign : 0;
      if (!before.church().equals(stay.church())) {
        Object target = stay.need() == null ? stay.setOut() : stay.need().mass();
        drive(List.of(before.church(), stay.church(), target), way, sign);
      }
      before = stay;
    }
  }

  private boolean follows(Stay before, Stay stay, Duration way) {
    if (before.cleared().equals(Instant.MIN)) {
      return true;
    }
    boolean staysOut =
        before.need() != null
            && stay.need() != null
            && before.church().equals(stay.church())
            && !before
                .need()
                .window()
                .end()
                .plus(situation.span().policies().turn())
                .isAfter(stay.need().window().start());
    return staysOut || !before.cleared().plus(way).isAfter(stay.setOut());
  }

  private void drive(Object carriage, Duration way, int sign) {
    int before = carriages.getOrDefault(carriage, 0);
    int after = before + sign;
    carriages.put(carriage, after);
    int made = (after > 0 ? 1 : 0) - (before > 0 ? 1 : 0);
    soft[6] += made;
    soft[7] += made * ((way.toSeconds() + 59) / 60);
  }
}
