package vestiary.calendar;

import java.util.List;
import java.util.Map;

/**
 * What the bishops of a country had settled in years gone by, so that a year of the past is shown
 * as it was kept: in England and Wales the Epiphany was on a Sunday from 2007 to 2017.
 */
final class FormerOptions {

  private static final List<Map<String, String>> LINES = CsvTable.read("former-options.csv");

  private FormerOptions() {}

  /** The settings with every option that differed in this year put back. */
  static CalendarSettings in(int year, CalendarSettings settings) {
    EpiphanyOn epiphany = settings.epiphany();
    AscensionOn ascension = settings.ascension();
    CorpusChristiOn corpusChristi = settings.corpusChristi();
    for (Map<String, String> line : LINES) {
      if (!line.get("calendar").equals(settings.calendar()) || !holds(line, year)) continue;
      String choice = line.get("choice");
      switch (line.get("option")) {
        case "epiphany" -> epiphany = Term.find(EpiphanyOn.class, choice).orElseThrow();
        case "ascension" -> ascension = Term.find(AscensionOn.class, choice).orElseThrow();
        default -> corpusChristi = Term.find(CorpusChristiOn.class, choice).orElseThrow();
      }
    }
    return new CalendarSettings(
        settings.calendar(), epiphany, ascension, corpusChristi, settings.evenings());
  }

  private static boolean holds(Map<String, String> line, int year) {
    return Integer.parseInt(line.get("since")) <= year
        && year <= Integer.parseInt(line.get("until"));
  }
}
