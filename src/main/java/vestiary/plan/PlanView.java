package vestiary.plan;

import java.util.List;
import vestiary.schedule.PlanFit;
import vestiary.web.ClashMark;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * A plan in words for its page.
 *
 * @param title its dates
 * @param address of this page
 * @param turn to the week and the journeys
 * @param status one sentence: proven, best so far, at work, came to nothing
 * @param atWork whether the page looks again by itself
 * @param score what it comes to, a few sentences
 * @param differs against the plan that holds; may be empty
 * @param changes the same church by church; empty if it holds, or if nothing was planned before
 * @param unfit that it holds and does not fit any more; usually empty
 * @param problem why what was asked for was not done; usually empty
 * @param doing which buttons there are
 * @param lacking what nothing lawful serves, and what is lawfully left out
 * @param churches each with its Masses
 * @param trips by the hour of leaving
 * @param toTakeHome what lies away from home in the end
 */
public record PlanView(
    Frame frame,
    String title,
    String address,
    List<Link> turn,
    String status,
    boolean atWork,
    List<String> score,
    String differs,
    List<Changed> changes,
    List<PlanFit.Unfit> unfit,
    String problem,
    Doing doing,
    List<Lacking> lacking,
    List<Church> churches,
    List<TripView> trips,
    List<RestingView> toTakeHome) {

  public PlanView {
    turn = List.copyOf(turn);
    score = List.copyOf(score);
    changes = List.copyOf(changes);
    unfit = List.copyOf(unfit);
    lacking = List.copyOf(lacking);
    churches = List.copyOf(churches);
    trips = List.copyOf(trips);
    toTakeHome = List.copyOf(toTakeHome);
  }

  /**
   * Addresses to send to; empty where it cannot be done now.
   *
   * @param from first date to plan again, ISO 8601
   * @param to last date, included
   */
  public record Doing(
      String apply, String undo, String cancel, String again, String from, String to) {}

  /**
   * @param sentences for example "Tuesday 8 December, Mass at 18:30: HT-W2 instead of HT-W1 for
   *     Oakhallow."
   */
  public record Changed(String church, List<String> sentences) {
    public Changed {
      sentences = List.copyOf(sentences);
    }
  }

  /**
   * @param about for example "Saturday 12 December, 14:00, Holy Trinity"
   * @param why to the clash that proves it; without address if there is none
   */
  public record Lacking(ClashMark mark, String about, String sentence, Link why) {}

  public record Church(String name, String place, List<Mass> masses) {
    public Church {
      masses = List.copyOf(masses);
    }
  }

  /**
   * @param what for example "Second Sunday of Advent"
   */
  public record Mass(
      String day, String time, String address, Ribbon ribbon, String what, List<Wear> wears) {
    public Mass {
      wears = List.copyOf(wears);
    }
  }

  /**
   * @param who for example "Tarnwick" or "Second concelebrant"
   * @param pieces for example "HT-W1, chasuble and stole"
   * @param week of the set as a picture; without address for a single piece
   * @param from for example "from Saint Anne, with Father Ilverton, leaves by 09:10"
   * @param state held, or changed against the plan that holds; may be empty
   * @param why whole sentences
   */
  public record Wear(
      String who, String pieces, Link week, String from, String state, List<String> why) {
    public Wear {
      why = List.copyOf(why);
    }
  }
}
