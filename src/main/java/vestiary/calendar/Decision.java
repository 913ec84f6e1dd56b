package vestiary.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * That authority has set a celebration on another date in one year. In Ireland Saint Patrick was
 * kept on Saturday 15 March 2008, since the 17th was in Holy Week. A decision for its own date lets
 * it stand there, as on Sunday 17 March 2024, which was of Lent.
 */
record Decision(String celebration, LocalDate date, String source) {

  private static final List<Map<String, String>> LINES = CsvTable.read("decisions.csv");

  /** What was decided for a whole country. */
  static List<Decision> of(String calendar) {
    return LINES.stream()
        .filter(line -> line.get("calendar").equals(calendar))
        .map(Decision::from)
        .toList();
  }

  static Decision from(Proper.KeptOn proper) {
    return new Decision(proper.celebration(), proper.date(), "Decision of the bishop");
  }

  private static Decision from(Map<String, String> line) {
    return new Decision(
        line.get("celebration"), LocalDate.parse(line.get("date")), line.get("source"));
  }
}
