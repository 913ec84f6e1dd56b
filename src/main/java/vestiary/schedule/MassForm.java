package vestiary.schedule;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.ClashMark;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * One Mass to be entered or changed.
 *
 * @param title for example "Saturday 5 December, 10:30, Holy Trinity" or "A new Mass"
 * @param action where the form is sent
 * @param departs how it departs from its pattern, for example "Not at 10:30 but at 11:00."; may be
 *     empty
 * @param instead Masses to which people can be sent if it is cancelled; empty where it cannot be
 * @param cancelAction where the cancelling of this Mass is sent; empty for a new one
 * @param restoreAction where the putting back of a cancelled Mass is sent; empty for any other
 * @param problem what keeps the whole form from being saved; empty if nothing does
 * @param saved what was just saved and what it leads to; {@link Saved#NONE} otherwise
 * @param unfit the plan of its day, if it does not fit any more
 * @param turn back to the day and the week
 * @param churchId of the church that has it; empty for a new one
 * @param serving who serves, for example "Servers: Anna K., Tom L."; empty if nobody is named
 * @param church slugs and names
 * @param date ISO 8601
 * @param time 24 hours, {@code HH:mm}
 * @param minutes length
 * @param people known priests, for completion
 * @param bringsPrincipal whether he brings his own alb, chasuble and stole
 * @param bringsConcelebrants how many concelebrants bring their own
 * @param besides who else vests and what is put on besides
 * @param setOutMinutes empty where the church's own rule holds
 * @param usualSetOut what that rule gives, for example "30 minutes on a Sunday"
 * @param language empty where the cluster has one alone
 * @param showsIntention only to those who may see it
 * @param version of what was read, to notice a lost race; empty for a new Mass
 */
public record MassForm(
    Frame frame,
    String title,
    String action,
    String departs,
    Choice instead,
    String cancelAction,
    String restoreAction,
    String problem,
    Saved saved,
    List<PlanFit.Unfit> unfit,
    List<Link> turn,
    String churchId,
    String serving,
    Choice church,
    Field date,
    Field time,
    Field minutes,
    MassChoices choices,
    Field celebrant,
    List<String> people,
    Field concelebrants,
    Field deacons,
    boolean bringsPrincipal,
    Field bringsConcelebrants,
    Besides besides,
    Field setOutMinutes,
    String usualSetOut,
    Field note,
    Choice language,
    boolean showsIntention,
    Field intention,
    String version) {

  public MassForm {
    unfit = List.copyOf(unfit);
    turn = List.copyOf(turn);
    people = List.copyOf(people);
  }

  /** The id of the Mass; empty for a new one. */
  public String massId() {
    return action.substring(Math.min(action.length(), "/masses/".length()));
  }

  /**
   * @param named concelebrants and deacons by name, with commas between
   * @param bishop whether a bishop presides
   * @param servers how many vest; likewise acolytes, readers and others
   * @param serverSizes of the servers' albs, with commas between
   * @param cope whether the celebrant also wears a cope, for a procession
   * @param veil whether he also wears a humeral veil, for the Blessed Sacrament
   */
  public record Besides(
      Field named,
      boolean bishop,
      Field servers,
      Field acolytes,
      Field readers,
      Field others,
      Field serverSizes,
      boolean cope,
      boolean veil) {}

  /**
   * @param sentence for example "Saved. This Mass now falls short:" or "Saved. Nothing stands in
   *     its way."
   * @param entered whom the form entered among the people, which it does of any unknown name
   */
  public record Saved(String sentence, List<Entered> entered, List<Found> clashes) {

    public static final Saved NONE = new Saved("", List.of(), List.of());

    public Saved {
      entered = List.copyOf(entered);
      clashes = List.copyOf(clashes);
    }
  }

  public record Entered(String sentence, Link person) {}

  public record Found(ClashMark mark, String sentence, Link more) {}
}
