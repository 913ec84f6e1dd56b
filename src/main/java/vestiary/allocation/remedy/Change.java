package vestiary.allocation.remedy;

import java.time.Duration;
import java.util.List;
import vestiary.allocation.plan.Hold;
import vestiary.calendar.Colour;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;

/** One thing that people could do about a shortage. */
public sealed interface Change {

  /**
   * How much trouble it is, least first: first what keeps to what was chosen and asks nobody
   * outside, a lawful substitute only after that, since vestments are to be provided as far as
   * possible (RS 124). Otherwise common practice, no source.
   */
  int trouble();

  /** Pieces are carried from another church and set aside. */
  record Carry(List<Piece> pieces, ChurchId from, List<Hold> holds) implements Change {
    public Carry {
      pieces = List.copyOf(pieces);
      holds = List.copyOf(holds);
    }

    @Override
    public int trouble() {
      return 1;
    }
  }

  /**
   * A Mass takes another colour that is lawful for it.
   *
   * @param needs all that the Mass then asks for
   * @param chosen whether its present colour was chosen, which weighs more than one that only
   *     follows from the calendar
   */
  record ChooseColour(MassId mass, Colour colour, List<Need> needs, boolean chosen)
      implements Change {
    public ChooseColour {
      needs = List.copyOf(needs);
    }

    @Override
    public int trouble() {
      return chosen ? 4 : 0;
    }
  }

  /** Visitors bring their own. */
  record BringOwn(MassId mass, Role role, int count) implements Change {
    @Override
    public int trouble() {
      return 2;
    }
  }

  /** Some take a lawful substitute. */
  record TakeStep(List<Wearer> wearers, PieceKind kind, Step step) implements Change {
    public TakeStep {
      wearers = List.copyOf(wearers);
    }

    @Override
    public int trouble() {
      return 3;
    }
  }

  /** What a sacristan has set aside for another Mass is given up. */
  record Release(List<Hold> holds) implements Change {
    public Release {
      holds = List.copyOf(holds);
    }

    @Override
    public int trouble() {
      return 5;
    }
  }

  /** Pieces come back before their time is over. */
  record BringBack(List<Piece> pieces, Away from) implements Change {
    public BringBack {
      pieces = List.copyOf(pieces);
    }

    @Override
    public int trouble() {
      return 7;
    }
  }

  /** Pieces come from outside the cluster for once. */
  record Borrow(List<Piece> pieces) implements Change {
    public Borrow {
      pieces = List.copyOf(pieces);
    }

    @Override
    public int trouble() {
      return 8;
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
      return 6;
    }
  }

  /** The cluster gets pieces of its own. */
  record Buy(List<Piece> pieces) implements Change {
    public Buy {
      pieces = List.copyOf(pieces);
    }

    @Override
    public int trouble() {
      return 9;
    }
  }
}
