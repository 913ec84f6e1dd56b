package vestiary.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * That one date in one country obliged, or did not, by a decision of its own, whatever the rules
 * give. Monday 9 December 2024 was held to oblige in the United States.
 */
record DatedDuty(LocalDate date, Duty duty) {

  private static final List<Map<String, String>> LINES = CsvTable.read("duties.csv");

  static List<DatedDuty> of(String calendar) {
    return LINES.stream()
        .filter(line -> line.get("calendar").equals(calendar))
        .map(DatedDuty::from)
        .toList();
  }

  private static DatedDuty from(Map<String, String> line) {
    Duty duty =
        new Duty(
            line.get("obliges").equals("yes"), Sentence.of(line.get("reason")), line.get("source"));
    return new DatedDuty(LocalDate.parse(line.get("date")), duty);
  }

  boolean isOn(int year, int dayOfYear) {
    return date.getYear() == year && date.getDayOfYear() == dayOfYear;
  }
}
