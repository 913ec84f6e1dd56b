package vestiary.people;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/** Everybody who appears in schedules, by surname. */
record PeopleView(Frame frame, String done, List<Row> people) {

  PeopleView {
    people = List.copyOf(people);
  }

  /**
   * @param about for example "priest, from outside"
   */
  record Row(Link person, String about) {}
}
