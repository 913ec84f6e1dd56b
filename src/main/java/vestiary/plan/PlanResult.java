package vestiary.plan;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.calendar.Colour;
import vestiary.pool.TripId;
import vestiary.vesting.ChurchId;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;

/**
 * What the planner found, as it is kept.
 *
 * @param worn by Mass in order of time, then wearer
 * @param leftOut what is lawfully left out
 * @param unmet what nothing lawful serves
 * @param trips in order of leaving
 * @param toTakeHome what lies away from home in the end, and nobody who drives anyway takes
 * @param contradictions holds and absences that no plan can keep, in words
 */
public record PlanResult(
    List<Worn> worn,
    List<Lacking> leftOut,
    List<Lacking> unmet,
    List<Trip> trips,
    List<Resting> toTakeHome,
    List<String> contradictions) {

  /** What a plan has that came to nothing. */
  public static final PlanResult NONE =
      new PlanResult(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  public PlanResult {
    worn = List.copyOf(worn);
    leftOut = List.copyOf(leftOut);
    unmet = List.copyOf(unmet);
    trips = List.copyOf(trips);
    // Plans of older releases were kept without.
    toTakeHome = toTakeHome == null ? List.of() : List.copyOf(toTakeHome);
    contradictions = List.copyOf(contradictions);
  }

  /** One vested person at one Mass. */
  public record Person(UUID mass, Role role, int ordinal) {}

  /**
   * A piece worn.
   *
   * @param set code of its set, or empty
   * @param depth how far down the ladder; 0 for what is asked
   * @param step the substitute's id, or empty
   * @param source the norm that allows it
   * @param held whether a sacristan had set it aside
   * @param from as it will be kept, clipped where it stays out for the next Mass
   * @param start of the Mass when it was planned
   * @param why in whole sentences
   */
  public record Worn(
      Person person,
      PieceKind kind,
      Colour colour,
      String piece,
      String set,
      int depth,
      String step,
      String source,
      boolean held,
      UUID church,
      Instant from,
      Instant until,
      Instant start,
      Instant end,
      List<String> why) {
    public Worn {
      why = List.copyOf(why);
    }
  }

  /**
   * A piece not worn.
   *
   * @param step the substitute's id; empty if nothing lawful is left
   */
  public record Lacking(
      Person person, PieceKind kind, Colour colour, int depth, String step, String source) {}

  /**
   * Pieces that lie away from home together.
   *
   * @param since from when; none if they lie there from the start
   */
  public record Resting(List<String> pieces, UUID at, UUID home, List<Instant> since) {
    public Resting {
      pieces = List.copyOf(pieces);
      since = List.copyOf(since);
    }
  }

  /**
   * Pieces carried together.
   *
   * @param ready from when; none if they lie there from the start
   * @param carrier who drives that way anyway; empty if the journey is made for them
   */
  public record Trip(
      List<String> pieces,
      UUID from,
      UUID to,
      List<Instant> ready,
      Instant leaveBy,
      Instant arriveBy,
      String carrier,
      boolean onAsking) {
    public Trip {
      pieces = List.copyOf(pieces);
      ready = List.copyOf(ready);
    }

    /** The same for pieces that ride together, whichever plan they ride by. */
    public UUID id() {
      return TripId.of(new ChurchId(from), new ChurchId(to), leaveBy, arriveBy, carrier);
    }
  }
}
