package vestiary.schedule;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * One recurring Mass time to be entered or changed.
 *
 * @param title for example "A new Mass time" or "Sundays at 10:30, Holy Trinity"
 * @param action where the form is sent
 * @param removal where it is asked what taking it off would do; empty for a new one
 * @param history of this one; empty for a new one
 * @param problem what keeps the whole form from being saved; empty if nothing does
 * @param outOfStep that Masses to come no longer agree with it; empty where they do
 * @param days weekdays, days of the calendar, or by rule
 * @param weekday any
 * @param turn which of the month, any; none is every one
 * @param everyOther whether only every other week
 * @param people known priests, for completion
 * @param language empty where the cluster has one alone
 * @param from first date that a change holds on; only where something is changed
 * @param version of what was read, to notice a lost race; empty for a new one
 */
public record PatternForm(
    Frame frame,
    String title,
    String action,
    String removal,
    String history,
    String problem,
    String outOfStep,
    Choice church,
    Choice days,
    Choice weekday,
    Choice turn,
    boolean everyOther,
    Field rrule,
    Field starts,
    Field until,
    Field time,
    Field minutes,
    Limits limits,
    Field except,
    Choice mass,
    Field celebrant,
    List<String> people,
    Field concelebrants,
    Field deacons,
    Field note,
    Choice language,
    Field from,
    boolean takeAlong,
    PatternPreview preview,
    Link terms,
    String version) {

  public PatternForm {
    people = List.copyOf(people);
  }

  /**
   * @param seasons any; none is all
   * @param months any; none is all
   */
  public record Limits(
      boolean notInTriduum, boolean notOnHolyDays, Choice seasons, Choice months, Choice school) {

    /** Whether the less common ones are set, so that they are shown open. */
    public boolean isUncommon() {
      return seasons.options().stream().anyMatch(Choice.Option::chosen)
          || months.options().stream().anyMatch(Choice.Option::chosen)
          || school.options().stream().skip(1).anyMatch(Choice.Option::chosen);
    }
  }
}
