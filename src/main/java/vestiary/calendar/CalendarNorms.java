package vestiary.calendar;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the bishops of one calendar have settled, beside the celebrations.
 *
 * @param whiteForTheDead whether white may be worn at Masses for the dead (GIRM 346 e)
 * @param holyDays celebrations that oblige besides Sunday (canon 1246)
 * @param keptOnSundayBeside those kept on the Sunday beside when they fall on Saturday or Monday
 * @param lapseBesideSunday those whose precept, not the celebration, lapses on Saturday or Monday
 * @param dutySource where the holy days of obligation are laid down
 * @param decisions where a celebration was set on another date in one year
 * @param duties single dates that obliged, or did not, by a decision of their own
 */
record CalendarNorms(
    OfferedCalendar offered,
    boolean whiteForTheDead,
    Set<String> holyDays,
    Set<String> keptOnSundayBeside,
    Set<String> lapseBesideSunday,
    String dutySource,
    List<Decision> decisions,
    List<DatedDuty> duties) {

  CalendarNorms {
    holyDays = Set.copyOf(holyDays);
    keptOnSundayBeside = Set.copyOf(keptOnSundayBeside);
    lapseBesideSunday = Set.copyOf(lapseBesideSunday);
    decisions = List.copyOf(decisions);
    duties = List.copyOf(duties);
  }

  static CalendarNorms from(Map<String, String> line) {
    LocalName name = new LocalName(line.get("name_en"), line.get("name_la"), line.get("name_es"));
    CalendarSettings defaults =
        new CalendarSettings(
            line.get("id"),
            Term.find(EpiphanyOn.class, line.get("epiphany")).orElseThrow(),
            Term.find(AscensionOn.class, line.get("ascension")).orElseThrow(),
            Term.find(CorpusChristiOn.class, line.get("corpus_christi")).orElseThrow(),
            Evenings.USUAL);
    return new CalendarNorms(
        new OfferedCalendar(line.get("id"), name, defaults),
        line.get("white_for_the_dead").equals("yes"),
        ids(line.get("holy_days")),
        ids(line.get("kept_on_sunday_beside")),
        ids(line.get("lapse_beside_sunday")),
        line.get("source").split(";")[0],
        Decision.of(line.get("id")),
        DatedDuty.of(line.get("id")));
  }

  private static Set<String> ids(String cell) {
    return cell.isEmpty() ? Set.of() : Set.of(cell.split(" "));
  }
}
