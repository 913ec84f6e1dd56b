package vestiary.ordo;

import java.util.List;
import vestiary.web.Celebrated;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * A liturgical year in words for its page and its booklet. Names carry their language where it is
 * not that of the page.
 *
 * @param of whose ordo it is: the cluster, or a church with its place
 * @param ofChurch whether it is one church's
 * @param title for example "The liturgical year 2027"
 * @param cycles for example "Sunday B, weekdays I"
 * @param span for example "29 November 2026 to 27 November 2027"
 * @param calendar for example "United States"
 * @param paper {@code a4} or {@code a5}
 * @param turn to the years before and after, to today, and to the files
 * @param papers for which paper it can be laid out
 * @param churches whose ordo can be seen; empty where there is no choice
 * @param movable the days that hang on Advent and Easter
 * @param holy the holy days of obligation
 * @param rose when rose may be worn, one sentence; empty if never
 * @param own what single churches keep instead, church by church
 * @param months in order, the first and the last perhaps of a few days
 */
public record OrdoView(
    Frame frame,
    String of,
    boolean ofChurch,
    String title,
    String cycles,
    String span,
    String calendar,
    String paper,
    List<Link> turn,
    List<Option> papers,
    List<Option> churches,
    List<Dated> movable,
    List<Dated> holy,
    String rose,
    List<Own> own,
    List<Month> months) {

  public OrdoView {
    turn = List.copyOf(turn);
    papers = List.copyOf(papers);
    churches = List.copyOf(churches);
    movable = List.copyOf(movable);
    holy = List.copyOf(holy);
    own = List.copyOf(own);
    months = List.copyOf(months);
  }

  public record Option(Link link, boolean chosen) {}

  /**
   * @param lang of the name, a BCP 47 tag; empty where it is the page's
   */
  public record Named(Celebrated celebration, String lang) {}

  /**
   * @param address of the day on this page
   * @param date for example "Sunday 28 March"; the liturgical year leaves no doubt of the civil one
   */
  public record Dated(String address, String date, Named name) {}

  /**
   * @param church with its place
   */
  public record Own(String church, List<Dated> days) {

    public Own {
      days = List.copyOf(days);
    }
  }

  /**
   * @param id its anchor, for example {@code december-2026}
   * @param name for example "December 2026"
   * @param few whether the year has only its first or last days
   */
  public record Month(String id, String name, boolean few, List<Day> days) {

    public Month {
      days = List.copyOf(days);
    }
  }

  /**
   * @param id its anchor
   * @param spoken for example "Tuesday 8"
   * @param initial of the weekday
   * @param address of the day's own page
   * @param redLetter a Sunday or a holy day
   * @param today whether it is this very day
   * @param lines what is kept, what else may be, what single churches keep, and the evening
   * @param week of the season, said on Sundays; otherwise empty
   * @param duty for example "Holy day of obligation"; may be empty
   * @param notes on what was left out or moved, and on the evening
   */
  public record Day(
      String id,
      String number,
      String initial,
      String spoken,
      String address,
      boolean redLetter,
      boolean today,
      List<Line> lines,
      String week,
      String duty,
      List<Note> notes) {

    public Day {
      lines = List.copyOf(lines);
      notes = List.copyOf(notes);
    }
  }

  /**
   * @param church those that keep it alone, with their places; otherwise empty
   * @param ribbons lawful colours, the usual one first
   */
  public record Line(String church, List<Ribbon> ribbons, Named name) {

    public Line {
      ribbons = List.copyOf(ribbons);
    }
  }

  /**
   * @param words before the names
   * @param names may be empty
   */
  public record Note(String words, List<Text> names) {

    public Note {
      names = List.copyOf(names);
    }
  }

  /**
   * @param lang as in {@link Named}
   */
  public record Text(String text, String lang) {}
}
