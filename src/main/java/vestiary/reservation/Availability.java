package vestiary.reservation;

import static vestiary.web.Speech.say;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import vestiary.pool.Care;
import vestiary.pool.PlannedWear;
import vestiary.pool.SetAside;
import vestiary.pool.Shortened;
import vestiary.vesting.ChurchId;

/** Whether one piece can be had for a Mass, and what decides it. */
sealed interface Availability {

  /**
   * It can be had.
   *
   * @param from when it is taken, set-out of the Mass or where an earlier Mass in the same church
   *     and its turn are over
   * @param until half-open end
   * @param lies where it lies before
   * @param way how long it takes from there; zero if it lies there already
   * @param displaced what a plan has it do, which the hold takes the place of
   * @param losing those of them that are for other Masses
   * @param shortened what it still does, in less time
   */
  record Free(
      String piece,
      Instant from,
      Instant until,
      ChurchId lies,
      Duration way,
      List<PlannedWear> displaced,
      List<PlannedWear> losing,
      List<Shortened> shortened)
      implements Availability {

    public Free {
      displaced = List.copyOf(displaced);
      losing = List.copyOf(losing);
      shortened = List.copyOf(shortened);
    }
  }

  /** It cannot; the reasons that somebody could do something about come last. */
  sealed interface Kept extends Availability {
    /** Code of the piece. */
    String piece();

    /** What is said of it after its code, without a full stop. */
    String why(OfferWords words);
  }

  /** It never leaves its church. */
  record StaysHome(String piece, ChurchId home) implements Kept {
    @Override
    public String why(OfferWords words) {
      return say("does not leave %s", words.church(home));
    }
  }

  /** Its owner lets it go nowhere. */
  record OwnerNever(String piece, String owner) implements Kept {
    @Override
    public String why(OfferWords words) {
      return say("is not lent by %s", owner);
    }
  }

  /** Its owner has said no for this Mass. */
  record OwnerSaidNo(String piece, String owner) implements Kept {
    @Override
    public String why(OfferWords words) {
      return say("is kept back: %s said no for this Mass", owner);
    }
  }

  /** Its owner wants to be asked, and has not said yes for this Mass. */
  record OnAsking(String piece, String owner) implements Kept {
    @Override
    public String why(OfferWords words) {
      return say("goes only when %s is asked", owner);
    }
  }

  /** Somebody has it set aside, or it is out. */
  record Held(String piece, SetAside by) implements Kept {
    @Override
    public String why(OfferWords words) {
      return words.held(by);
    }
  }

  /** It is at the cleaner, mended or lent. */
  record InCare(String piece, Care care) implements Kept {
    @Override
    public String why(OfferWords words) {
      return words.care(care);
    }
  }

  /** No journey is known from where it lies. */
  record NoJourney(String piece, ChurchId lies) implements Kept {
    @Override
    public String why(OfferWords words) {
      return say("lies at %s, from where no journey is known", words.church(lies));
    }
  }

  /**
   * It cannot come in time.
   *
   * @param lies from where
   * @param since from when on it could leave; empty for this moment
   */
  record TooLate(String piece, ChurchId lies, List<Instant> since, Duration way) implements Kept {
    @Override
    public String why(OfferWords words) {
      return words.late(this);
    }
  }

  /**
   * It could come, and not go on in time to where it is wanted next.
   *
   * @param next where
   * @param by when
   */
  record WantedNext(String piece, ChurchId next, Instant by, Duration way) implements Kept {
    @Override
    public String why(OfferWords words) {
      return words.wantedNext(this);
    }
  }

  default Optional<Free> findFree() {
    return this instanceof Free free ? Optional.of(free) : Optional.empty();
  }
}
