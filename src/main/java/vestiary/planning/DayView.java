package vestiary.planning;

import java.util.List;
import vestiary.calendar.Colour;
import vestiary.web.Celebrated;
import vestiary.web.ClashMark;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;
import vestiary.web.Standing;

/**
 * One day of all churches, in words for its page.
 *
 * @param date for example "Saturday, December 2026"; the number stands apart
 * @param number of the day in the month
 * @param title the page's name in a list, for example "Saturday 5 December 2026"
 * @param season for example "Advent, second week · Sunday A, weekdays II · psalter week II"
 * @param redLetter a Sunday or a holy day
 * @param ribbons the lawful colours, the first as the calendar puts it
 * @param celebration what is kept
 * @param turn to the days before and after, and to the week
 * @param add the form for a new Mass on this day
 * @param departures Masses that are not said at their usual hour, or in another church
 * @param because what is kept, in which colour and why, in one sentence
 * @param reasons the rules that decided the day, one after another, with their norms
 * @param others what else may be celebrated; empty if nothing
 * @param left what was left out or moved, with the reason
 * @param own what single churches keep instead
 * @param notices what else must be thought of, beside clashes
 */
public record DayView(
    Frame frame,
    String date,
    String number,
    String title,
    String season,
    boolean redLetter,
    List<Colour> ribbons,
    Celebrated celebration,
    Standing standing,
    List<Link> turn,
    Link add,
    DayPicture.Drawing picture,
    List<Mass> masses,
    List<Departure> departures,
    String because,
    List<Reason> reasons,
    List<Other> others,
    List<Omitted> left,
    List<OwnDay> own,
    List<DayNotices.Notice> notices) {

  public DayView {
    ribbons = List.copyOf(ribbons);
    turn = List.copyOf(turn);
    masses = List.copyOf(masses);
    departures = List.copyOf(departures);
    reasons = List.copyOf(reasons);
    others = List.copyOf(others);
    left = List.copyOf(left);
    own = List.copyOf(own);
    notices = List.copyOf(notices);
  }

  /**
   * @param church where it usually is
   * @param sentence for example "No Mass at 10:30; join us at Holy Trinity at 11:00."
   * @param more to the Mass
   */
  public record Departure(String church, String sentence, Link more) {}

  /**
   * @param source for example "GIRM 346"; may be empty
   */
  public record Reason(String sentence, String source) {}

  /**
   * @param address of its form
   * @param setOut for example "set out by 08:10"
   * @param what the Mass and its celebration, for example "of Sunday, Advent II"
   * @param celebrant for example "Bishop Fenwarden" or "no celebrant"
   * @param company for example "five concelebrants, deacons Greywater and Pellmoor"; may be empty
   * @param serving for example "servers: Anna K., Tom L.; reader: Odo Larkspire"; may be empty
   * @param needs for example "six chasubles with stole, two dalmatics with stole"
   * @param reason why this colour
   * @param otherChoices lawful colours that would fall short, for example "White would be two
   *     short."; may be empty
   */
  public record Mass(
      String address,
      String time,
      String setOut,
      String church,
      String place,
      Ribbon ribbon,
      String what,
      String celebrant,
      String company,
      String serving,
      String needs,
      List<Clash> clashes,
      Reason reason,
      String otherChoices) {

    public Mass {
      clashes = List.copyOf(clashes);
    }
  }

  /**
   * @param more to the clash's page
   * @param mends to what mends it; without an address where nothing can be pressed
   */
  public record Clash(ClashMark mark, String sentence, Link more, Link mends) {}

  public record Other(Ribbon ribbon, Celebrated celebration, Reason reason) {}

  public record Omitted(String name, Reason reason) {}

  /**
   * @param because what this church keeps and why, in one sentence
   * @param reasons the rules that decided it
   */
  public record OwnDay(
      String church, Ribbon ribbon, Celebrated celebration, String because, List<Reason> reasons) {

    public OwnDay {
      reasons = List.copyOf(reasons);
    }
  }
}
