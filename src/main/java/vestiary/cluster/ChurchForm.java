package vestiary.cluster;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * One church to be entered or changed, with the journeys from it.
 *
 * @param title for example "Holy Trinity, Tollbridge" or "A new church"
 * @param action where the form is sent
 * @param done what was just done, for example "Saved."; may be empty
 * @param problem what keeps the whole form from being saved; empty if nothing does
 * @param parish by name; an unknown one is made
 * @param parishes known ones, for completion
 * @param titular a celebration of the calendar; the first option is none of these
 * @param titularName the title's own feast where the calendar has none, with its day and colour
 * @param dedication ISO 8601; empty if unknown
 * @param journeys to each other church
 * @param version of what was read, to notice a lost race; empty for a new church
 * @param notices whole sentences for those who answer for its goods
 */
public record ChurchForm(
    Frame frame,
    String title,
    String action,
    String done,
    String problem,
    Link back,
    Field slug,
    Field name,
    Field parish,
    List<String> parishes,
    Field place,
    Field titleOfChurch,
    Choice titular,
    Field titularName,
    Field titularMonth,
    Field titularDay,
    Choice titularColour,
    Field dedication,
    Field setOutMinutes,
    Field clearanceMinutes,
    Field latitude,
    Field longitude,
    List<Journey> journeys,
    String version,
    List<String> notices) {

  public ChurchForm {
    parishes = List.copyOf(parishes);
    journeys = List.copyOf(journeys);
    notices = List.copyOf(notices);
  }

  /**
   * @param slug of the other church; the form sends {@code journey-} and it
   * @param minutes empty if unknown
   * @param estimate for example "about 19 minutes by the map"; may be empty
   */
  public record Journey(String slug, String church, String place, Field minutes, String estimate) {
    public String field() {
      return "journey-" + slug;
    }
  }
}
