package vestiary.absence;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * Who is away in the weeks to come.
 *
 * @param span for example "30 November 2026 to 24 January 2027"
 * @param lead how many are away, in a sentence
 */
record AbsencesView(Frame frame, String span, String lead, List<Link> turn, List<Week> weeks) {

  AbsencesView {
    turn = List.copyOf(turn);
    weeks = List.copyOf(weeks);
  }

  /**
   * @param nobodyLeft that nobody is left to celebrate at some time; empty while somebody is
   */
  record Week(String span, String nobodyLeft, List<Away> away) {
    Week {
      away = List.copyOf(away);
    }
  }

  /**
   * @param when for example "from 7 to 12 December 2026"
   * @param reason empty for whoever may not know, and where nobody said
   */
  record Away(Link person, String when, String reason) {}
}
