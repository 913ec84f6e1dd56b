package vestiary.people;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * Everybody who appears in schedules, by what they serve as.
 *
 * @param done what was just done; may be empty
 */
record PeopleView(Frame frame, String done, List<Group> groups) {

  PeopleView {
    groups = List.copyOf(groups);
  }

  /** Those of one role or a few, by surname. */
  record Group(String title, List<Row> people) {
    Group {
      people = List.copyOf(people);
    }
  }

  /**
   * @param wholeName of a child, for whoever is responsible and never on paper; else empty
   * @param about for example "from outside; Saint Anne; English and Spanish"; may be empty
   * @param away that the person is away now and until when; empty otherwise
   */
  record Row(Link person, String wholeName, String about, String away) {}
}
