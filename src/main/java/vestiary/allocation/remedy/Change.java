package vestiary.allocation.remedy;

import java.time.Duration;
import java.util.List;
import vestiary.allocation.plan.Hold;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;

/** One thing that people could do about a shortage. */
public sealed interface Change {

  /** How much trouble it is, least first; common practice, no source. */
  int trouble();

  /** Pieces are carried from another church and set aside. */
  record Carry(List<Piece> pieces, ChurchId from, List<Hold> holds) implements Change {
    @Override
    public int trouble() {
      return 1;
    }
  }

  /** Some take a lawful substitute. */
  record TakeStep(List<Wearer> wearers, Step step) implements Change {
    @Override
    public int trouble() {
      return 2;
    }
  }

  /** What a sacristan has set aside for another Mass is given up. */
  record Release(List<Hold> holds) implements Change {
    @Override
    public int trouble() {
      return 3;
    }
  }

  /** Visitors bring their own. */
  record BringOwn(MassId mass, Role role, int count) implements Change {
    @Override
    public int trouble() {
      return 4;
    }
  }

  /** Pieces come back before their time is over. */
  record BringBack(List<Piece> pieces, Away from) implements Change {
    @Override
    public int trouble() {
      return 5;
    }
  }

  /** Pieces come from outside the cluster for once. */
  record Borrow(List<Piece> pieces) implements Change {
    @Override
    public int trouble() {
      return 6;
    }
  }

  /**
   * A Mass starts at another time.
   *
   * @param by later, or earlier if negative
   */
  record MoveStart(MassId mass, Duration by) implements Change {
    @Override
    public int trouble() {
      return 7;
    }
  }

  /** The cluster gets pieces of its own. */
  record Buy(List<Piece> pieces) implements Change {
    @Override
    public int trouble() {
      return 8;
    }
  }
}
