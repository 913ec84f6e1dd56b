package vestiary.planning;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * What everybody wears at one Mass, and by which norm.
 *
 * @param over for example "Holy Trinity, Saturday 5 December, 10:30"
 * @param lead the Mass, its colour and its times in one sentence
 * @param wearers in the order of their roles; empty if nothing is asked for
 * @param brought who brings what, one sentence each
 * @param unasked what is not counted here, and why; empty if all is
 */
public record VestureView(
    Frame frame,
    String over,
    String title,
    String lead,
    List<Link> turn,
    List<Wearers> wearers,
    List<String> brought,
    String unasked) {

  public VestureView {
    turn = List.copyOf(turn);
    wearers = List.copyOf(wearers);
    brought = List.copyOf(brought);
  }

  /**
   * @param who for example "Five concelebrants" or "The celebrant, Bishop Fenwarden"
   */
  public record Wearers(String who, List<Line> lines) {

    public Wearers {
      lines = List.copyOf(lines);
    }
  }

  /**
   * @param pieces for example "Five chasubles"
   * @param ribbons its colour, or none where people name no colour
   * @param source the norm that asks for it
   * @param instead what may be worn instead, each with its norm, or that nothing may
   * @param sizes those that would suit best, for example "Best in sizes 120 and 130."; may be empty
   */
  public record Line(
      String pieces, List<Ribbon> ribbons, String source, String instead, String sizes) {

    public Line {
      ribbons = List.copyOf(ribbons);
    }
  }
}
