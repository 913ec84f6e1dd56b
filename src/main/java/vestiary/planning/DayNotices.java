package vestiary.planning;

import java.util.List;
import vestiary.schedule.DatedMass;
import vestiary.web.Link;

/**
 * What else must be thought of on a day, beside clashes. This room does not know what, so the
 * features that do answer.
 */
public interface DayNotices {

  /** Of the Masses of one day. */
  List<Notice> of(List<DatedMass> day);

  /**
   * @param isPressing whether it is late, or soon will be
   * @param about where and when
   * @param sentence how it stands
   */
  record Notice(boolean isPressing, String about, String sentence, Link more) {}
}
