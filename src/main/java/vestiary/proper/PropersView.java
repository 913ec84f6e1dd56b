package vestiary.proper;

import java.util.List;
import vestiary.web.Celebrated;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * What is kept beside the calendar of the country.
 *
 * @param lead how many days, beside which calendar
 * @param done what was just done, for example "Saved."; may be empty
 * @param turn the way back
 * @param add the form for a day of every year
 * @param addDate the form for a date of one year
 * @param parts those that have a row
 */
public record PropersView(
    Frame frame,
    String lead,
    String done,
    List<Link> turn,
    Link add,
    Link addDate,
    List<Part> parts) {

  public PropersView {
    turn = List.copyOf(turn);
    parts = List.copyOf(parts);
  }

  /**
   * @param rows in the order of the calendar
   */
  public record Part(String heading, List<Row> rows) {
    public Part {
      rows = List.copyOf(rows);
    }
  }

  /**
   * @param date for example "19 August"; with its year where it has only one
   * @param ribbons its colours
   * @param place for example "principal patron of the diocese: feast"
   * @param churches their names, or "All churches"
   * @param sentences what becomes of it, in the coming twelve months or in its one year
   */
  public record Row(
      String id,
      String date,
      Celebrated celebration,
      List<Ribbon> ribbons,
      String place,
      List<String> churches,
      List<String> sentences,
      Link change) {
    public Row {
      ribbons = List.copyOf(ribbons);
      churches = List.copyOf(churches);
      sentences = List.copyOf(sentences);
    }
  }
}
