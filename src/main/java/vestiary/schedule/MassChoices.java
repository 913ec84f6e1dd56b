package vestiary.schedule;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.ColourChoice;
import vestiary.web.Field;

/**
 * What the norms leave open for a Mass at this church, date and time. What is not permitted is not
 * offered, but named with its reason.
 *
 * @param says what the calendar says, for example "Saturday of the first week of Advent, violet."
 * @param masses which Mass; the first option is what follows from date and time
 * @param needsOwnName whether the chosen Mass asks what it is of (votive, various needs)
 * @param votiveOf for example "the Sacred Heart"
 * @param needsLeave whether the chosen Mass asks by whose leave
 * @param leave none, celebrant, rector, bishop
 * @param celebrations "as the calendar says" first; one option or none, and nothing is asked
 * @param asTheCalendarSays whether no colour is chosen
 * @param defaultColour for example "as the calendar says: violet"
 * @param colours the lawful ones; fewer than two, and nothing is asked
 * @param ordains whether the chosen Mass asks how many are ordained priests and how many deacons
 * @param notPermitted in the order of the norms
 */
public record MassChoices(
    String says,
    Choice masses,
    boolean needsOwnName,
    Field votiveOf,
    boolean needsLeave,
    Choice leave,
    Choice celebrations,
    boolean asTheCalendarSays,
    String defaultColour,
    ColourChoice colours,
    boolean ordains,
    Field newPriests,
    Field newDeacons,
    List<NotPermitted> notPermitted) {

  public MassChoices {
    notPermitted = List.copyOf(notPermitted);
  }

  /**
   * @param mass for example "Wedding Mass"
   * @param source for example "GIRM 372"
   */
  public record NotPermitted(String mass, String reason, String source) {}
}
