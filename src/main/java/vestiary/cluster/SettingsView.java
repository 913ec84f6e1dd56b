package vestiary.cluster;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The cluster's settings and its churches.
 *
 * @param action where the form is sent
 * @param done what was just done, for example "Saved."; may be empty
 * @param problem what keeps the whole form from being saved; empty if nothing does
 * @param churches in their order
 * @param addChurch the form for a new one
 * @param propers what they keep beside the calendar
 * @param version of what was read, to notice a lost race
 */
public record SettingsView(
    Frame frame,
    String action,
    String done,
    String problem,
    CalendarFields fields,
    Policies policies,
    List<Church> churches,
    Link addChurch,
    Link propers,
    String version) {

  public SettingsView {
    churches = List.copyOf(churches);
  }

  /**
   * @param anticipatedFrom 24 hours, {@code HH:mm}
   * @param eveningRule precept or rank
   * @param openEvening solemnity or weekday, where no law settles it
   * @param ladderOrder stole or white first
   * @param countBy calendar or liturgical day
   * @param whiteForAll whether white may stand in at a large liturgy
   * @param countAlbs whether albs are counted where they are kept by list
   * @param pontificals whether a bishop's own pieces are asked for
   */
  public record Policies(
      Field anticipatedFrom,
      Choice eveningRule,
      Choice openEvening,
      Choice ladderOrder,
      boolean whiteForAll,
      Field turnMinutes,
      Field weekdaySetOut,
      Field largeSetOut,
      Field largeClearance,
      Choice countBy,
      Field permittedWeekday,
      Field permittedSunday,
      boolean countAlbs,
      boolean pontificals) {}

  /**
   * @param about for example "set out 30 minutes before, cleared 15 after"
   */
  public record Church(String name, String place, String about, String address) {}
}
