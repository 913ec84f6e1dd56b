package vestiary.planning;

import java.util.List;
import vestiary.web.ClashMark;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Standing;

/**
 * All clashes of a span, by day, in words for their page.
 *
 * @param span for example "30 November to 13 December 2026"
 * @param from first day of the span, ISO 8601, for the form
 * @param to last day, included
 * @param standing says so too where nothing stands in the way
 * @param days those with a clash
 */
public record ClashesView(
    Frame frame,
    String span,
    String from,
    String to,
    List<Link> turn,
    Standing standing,
    List<Day> days) {

  public ClashesView {
    turn = List.copyOf(turn);
    days = List.copyOf(days);
  }

  /**
   * @param name for example "Saturday 5 December"
   */
  public record Day(String name, List<Item> clashes) {
    public Day {
      clashes = List.copyOf(clashes);
    }
  }

  /**
   * @param time of the Mass
   * @param place church and place, for example "Saint Anne, Millferry"
   * @param title states the count
   * @param address of the clash's page
   */
  public record Item(
      ClashMark mark, String time, String place, String title, String sentence, String address) {}
}
