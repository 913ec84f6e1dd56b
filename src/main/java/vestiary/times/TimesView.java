package vestiary.times;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * Mass times for the people.
 *
 * @param over the cluster's name
 * @param lead the days, or that nothing is published
 * @param turn to the weeks before and after, as far as they are published, and to the other forms
 * @param choices of church and of language
 * @param changesHead over what differs from the usual times
 * @param days those with a Mass
 * @param published when, in a sentence; may be empty
 * @param press what whoever may publish is offered; none for others
 */
record TimesView(
    Frame frame,
    String language,
    String over,
    String title,
    String lead,
    List<Link> turn,
    List<Choice> choices,
    String changesHead,
    List<String> changes,
    List<Day> days,
    String none,
    String published,
    List<Press> press) {

  TimesView {
    turn = List.copyOf(turn);
    choices = List.copyOf(choices);
    changes = List.copyOf(changes);
    days = List.copyOf(days);
    press = List.copyOf(press);
  }

  /** A choice that is a link. */
  record Choice(Link link, boolean chosen) {}

  record Day(String head, boolean isSunday, List<Mass> masses) {
    Day {
      masses = List.copyOf(masses);
    }
  }

  /**
   * @param church empty where one church alone is shown
   * @param difference from the usual times; may be empty
   */
  record Mass(String time, String church, String what, String difference) {}

  /**
   * @param done what was just done; may be empty
   * @param standing what holds and what has changed since
   * @param since what has changed, in sentences
   * @param warning of a schedule that begins soon; may be empty
   * @param address of the public page, to be given to people
   * @param feed of the public calendar
   */
  record Press(
      String done,
      String problem,
      String standing,
      List<String> since,
      String warning,
      Field weeks,
      String address,
      String feed) {
    Press {
      since = List.copyOf(since);
    }
  }
}
