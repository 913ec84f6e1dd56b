package vestiary.setout;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.people.Person;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

/**
 * All that lies on the vesting table for one Mass.
 *
 * @param window from set-out to clearance
 * @param named whether anything is planned, held or out for it, so that somebody wears something by
 *     name
 * @param people by role and number
 * @param spares what may stand in, kind by kind
 * @param coming what is carried here for it, by the hour of arrival
 * @param asked those of whom it would be of use to know how tall they are, since albs of different
 *     lengths are here and they come without their own
 */
public record SetOut(
    DatedMass mass,
    Window window,
    boolean named,
    List<Vested> people,
    List<Spare> spares,
    List<Coming> coming,
    List<Person> asked) {

  public SetOut {
    people = List.copyOf(people);
    spares = List.copyOf(spares);
    coming = List.copyOf(coming);
    asked = List.copyOf(asked);
  }

  /** Whence a piece of somebody's vesture is. */
  public enum Whence implements Term {
    /** A piece of the pool is named for him. */
    POOL,
    /** A piece of the pool is asked for, and none is named. */
    OPEN,
    /** He comes with his own. */
    BROUGHT,
    /** Nobody counts them: from the cupboard, if it is worn at all. */
    CUPBOARD,
    /** Left out by a lawful step that was accepted by name. */
    LEFT_OUT
  }

  /**
   * One who vests.
   *
   * @param who for example "Father Ambrose Tarnwick" or "Second concelebrant"
   * @param laid in a pile, lowest first
   * @param beside what lies apart
   */
  public record Vested(Wearer wearer, String who, List<Line> laid, List<Line> beside) {
    public Vested {
      laid = List.copyOf(laid);
      beside = List.copyOf(beside);
    }
  }

  /**
   * One thing that is worn.
   *
   * @param pieces the one named; none otherwise
   * @param steps the lawful step that was accepted; none otherwise
   * @param state planned, held or out; empty where no piece is named
   * @param where it is kept, or from where it comes and by when
   * @param fit of an alb, where it does not fit or none is named: for example "too long: he would
   *     trip"; else empty
   */
  public record Line(
      Need need,
      Whence whence,
      List<PooledPiece> pieces,
      List<Step> steps,
      String state,
      String where,
      String fit) {
    public Line {
      pieces = List.copyOf(pieces);
      steps = List.copyOf(steps);
    }

    public PieceKind kind() {
      return need.kind();
    }

    /** The piece of the pool that is named; empty if none is. */
    public Optional<PooledPiece> findPiece() {
      return pieces.stream().findFirst();
    }

    /** Of the piece that is named, or else as it is asked for. */
    public Colour colour() {
      return findPiece().map(PooledPiece::colour).orElse(need.colour());
    }
  }

  /**
   * What may stand in for pieces of one kind and colour.
   *
   * @param asked how many of them the Mass asks for
   * @param free pieces of that kind and colour that lie here and are free from set-out to clearance
   * @param ladder lawful substitutes, the nearest first
   */
  public record Spare(
      PieceKind kind, Colour colour, int asked, List<PooledPiece> free, List<Step> ladder) {
    public Spare {
      free = List.copyOf(free);
      ladder = List.copyOf(ladder);
    }
  }

  /**
   * Pieces that are carried here together.
   *
   * @param pieces codes
   * @param from name of the church
   * @param carrier who travels that way anyway; empty if the journey is made for it
   * @param back where they go next and by when they leave, if that is planned; else empty
   */
  public record Coming(
      List<String> pieces, String from, Instant arriveBy, String carrier, String back) {
    public Coming {
      pieces = List.copyOf(pieces);
    }
  }
}
