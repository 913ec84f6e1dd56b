package vestiary.assigning;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * Who celebrates where, of a week or a month.
 *
 * @param lead how it stands, in sentences
 * @param done what was just done, with what undoes it; none or one
 * @param propose where a proposal is worked out; empty where nothing lies ahead
 * @param priests to choose from where one falls ill
 */
record CelebrantsView(
    Frame frame,
    String title,
    String lead,
    List<Done> done,
    List<Link> turn,
    List<OnDay> days,
    List<Share> shares,
    String sharesNote,
    Link propose,
    List<Choosable> priests,
    String from,
    String to) {

  /** One day. */
  record OnDay(String name, String celebration, boolean redLetter, List<Line> masses) {}

  /**
   * One Mass or other liturgy.
   *
   * @param celebrant with a word where nobody is named
   * @param with who concelebrates by name; often empty
   * @param open whether it is a Mass for which nobody is named
   * @param away whether it lies ahead and whoever is named is away then; why is not said here
   */
  record Line(
      String time,
      String church,
      String what,
      Ribbon ribbon,
      String celebrant,
      String with,
      boolean open,
      boolean away,
      String address) {}

  /** What one priest has of it. */
  record Share(String name, int masses, int early, int far, long minutes) {}

  record Choosable(String value, String name) {}
}
