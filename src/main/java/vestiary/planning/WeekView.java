package vestiary.planning;

import java.util.List;
import vestiary.calendar.Colour;
import vestiary.schedule.PlanFit;
import vestiary.web.Celebrated;
import vestiary.web.ClashMark;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;
import vestiary.web.Standing;

/**
 * A week of all churches, days down and churches across, in words for its page.
 *
 * @param done what was just done, for example on a device that now stays signed in; mostly empty
 * @param season for example "Advent, first week"
 * @param cycles for example "Sundays B, weekdays I"
 * @param title for example "30 November to 6 December 2026"
 * @param turn to the weeks before and after, and to this one
 * @param add the form for a new Mass
 * @param plan what the button for the plan of the week sends
 * @param choice which churches are shown, where there are too many for one page
 * @param churches those shown, in the order of the columns
 * @param days seven, each with one cell a church
 * @param notes at the foot, by number from 1
 * @param ahead what stands in the way in the week after, so that nobody is taken by surprise
 * @param nothing said in place of the table while there are no churches; otherwise empty
 */
public record WeekView(
    Frame frame,
    String done,
    String season,
    String cycles,
    String title,
    List<Link> turn,
    Link add,
    Plan plan,
    Standing standing,
    Choice choice,
    List<Church> churches,
    List<Day> days,
    List<Note> notes,
    List<Ahead> ahead,
    String nothing) {

  public WeekView {
    turn = List.copyOf(turn);
    churches = List.copyOf(churches);
    days = List.copyOf(days);
    notes = List.copyOf(notes);
    ahead = List.copyOf(ahead);
  }

  /**
   * @param from first date, ISO 8601
   * @param to last date, included
   * @param links to the plan that holds and to the list of what is carried; empty before there is
   *     one
   * @param unfit plans that hold and do not fit any more
   */
  public record Plan(String from, String to, List<Link> links, List<PlanFit.Unfit> unfit) {
    public Plan {
      links = List.copyOf(links);
      unfit = List.copyOf(unfit);
    }
  }

  public record Church(String name, String place) {}

  /**
   * @param action the page's own address, without the query
   * @param sentence for example "Seven of eleven churches are shown."
   * @param options every church; empty where all fit and nothing is to be chosen
   */
  public record Choice(String action, String sentence, List<Option> options) {

    /** All churches fit on the page. */
    public static final Choice NONE = new Choice("", "", List.of());

    public Choice {
      options = List.copyOf(options);
    }
  }

  public record Option(String slug, String name, String place, boolean chosen) {}

  /**
   * @param date ISO 8601
   * @param number of the day in the month
   * @param address of the day's page
   * @param redLetter a Sunday or a holy day
   * @param colours for example "violet or white"
   * @param ribbons the lawful colours, the first as the calendar puts it
   * @param celebrations first what is kept, then what else may be, then the evening
   * @param duty for example "holy day of obligation"; may be empty
   */
  public record Day(
      String date,
      String number,
      String weekday,
      String address,
      boolean redLetter,
      String colours,
      List<Colour> ribbons,
      List<Celebrated> celebrations,
      String duty,
      List<Cell> cells) {

    public Day {
      ribbons = List.copyOf(ribbons);
      celebrations = List.copyOf(celebrations);
      cells = List.copyOf(cells);
    }
  }

  /**
   * @param church its name, for narrow screens
   * @param own what this church alone keeps that day (its title, its dedication); usually empty
   * @param masses by time
   * @param departures Masses that are usually here and are not, in a few words, with their pages
   */
  public record Cell(String church, List<Own> own, List<Entry> masses, List<Link> departures) {

    public Cell {
      own = List.copyOf(own);
      masses = List.copyOf(masses);
      departures = List.copyOf(departures);
    }

    public boolean isEmpty() {
      return own.isEmpty() && masses.isEmpty() && departures.isEmpty();
    }
  }

  public record Own(Ribbon ribbon, Celebrated celebration) {}

  /**
   * @param address of the Mass's form
   * @param time for example "08:00"
   * @param celebrant for example "Tarnwick" or "no celebrant"
   * @param what after the colour's name, for example "confirmation"; may be empty
   * @param needs for example "3 concelebrants, 1 deacon"; may be empty
   */
  public record Entry(
      String address,
      Ribbon ribbon,
      String time,
      String celebrant,
      String what,
      String needs,
      List<Mark> clashes) {

    public Entry {
      clashes = List.copyOf(clashes);
    }
  }

  /**
   * @param words a few, for example "two red short"
   * @param number of the note
   */
  public record Mark(ClashMark mark, String words, int number) {}

  /**
   * @param about day, time and church, for example "Saturday 08:30, Holy Trinity"
   * @param sentence one or more whole sentences
   * @param more to the clash's page
   * @param mends to what mends it; without an address where nothing can be pressed
   */
  public record Note(
      int number, ClashMark mark, String about, String sentence, Link more, Link mends) {}

  /**
   * @param about day, time and church, for example "Tuesday 8 December, 18:30, Saint Anne"
   * @param title states the count, without a full stop
   * @param more to the clash's page
   */
  public record Ahead(ClashMark mark, String about, String title, Link more) {}
}
