package vestiary.exchange;

import java.util.List;
import vestiary.web.Frame;

/** The lists that can be taken out. */
public record ExportView(Frame frame, List<ListOut> lists) {

  public ExportView {
    lists = List.copyOf(lists);
  }

  /**
   * @param name for example "Mass times"
   * @param count for example "24 lines"
   * @param leftOut what the list cannot say, in a sentence; may be empty
   * @param address of the file
   * @param file what it is called, for example patterns.csv
   */
  public record ListOut(String name, String count, String leftOut, String address, String file) {}
}
