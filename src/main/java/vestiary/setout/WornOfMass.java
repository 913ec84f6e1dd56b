package vestiary.setout;

import java.util.List;
import vestiary.pool.Worn;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Wearer;

/**
 * What was planned for a Mass, and what was really worn.
 *
 * @param lines what lay ready, by wearer
 * @param besides what was worn although nobody had planned it, in the place of nothing
 * @param isPutRight whether anybody has said anything
 */
record WornOfMass(DatedMass mass, List<Line> lines, List<Worn> besides, boolean isPutRight) {
  WornOfMass {
    lines = List.copyOf(lines);
    besides = List.copyOf(besides);
  }

  /**
   * @param wearers for whom it lay ready; none if it was held for nobody in particular
   * @param instead code of the piece that was worn in its place; empty if none was
   */
  record Line(String piece, List<Wearer> wearers, boolean worn, String instead) {
    Line {
      wearers = List.copyOf(wearers);
    }
  }
}
