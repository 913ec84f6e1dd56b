package vestiary.label;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * Labels to be printed: what is chosen, and the sheets as they come out.
 *
 * @param warning that the labels' addresses open on this machine alone; empty else
 * @param paper a4 or letter, by which the page is printed
 * @param lead how many labels on how many sheets
 * @param sheets as they come out of the printer
 * @param chosen what the press that notes them as printed sends; empty if there is nothing
 */
public record LabelsView(
    Frame frame,
    String done,
    String problem,
    String warning,
    Choice church,
    Choice which,
    Field codes,
    Choice sheet,
    Field start,
    String paper,
    String lead,
    List<Sheet> sheets,
    List<Sent> chosen) {

  public LabelsView {
    sheets = List.copyOf(sheets);
    chosen = List.copyOf(chosen);
  }

  /** Hidden, so that the press means what was seen. */
  public record Sent(String name, String value) {}

  /**
   * One sheet of paper in millimetres.
   *
   * @param words for those who do not see it, for example "Sheet 1 of 3"
   */
  public record Sheet(
      String words,
      double width,
      double height,
      double labelWidth,
      double labelHeight,
      List<LabelPicture> labels) {
    public Sheet {
      labels = List.copyOf(labels);
    }
  }
}
