package vestiary.schedule;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The school terms of the cluster.
 *
 * @param done what was just done; empty if nothing was
 * @param problem what keeps the whole form from being saved; empty if nothing does
 * @param by the Mass times that keep to school terms
 */
public record SchoolTermsView(
    Frame frame,
    String done,
    String problem,
    List<Row> terms,
    List<Link> by,
    Field name,
    Field first,
    Field last) {

  public SchoolTermsView {
    terms = List.copyOf(terms);
    by = List.copyOf(by);
  }

  /**
   * @param dates for example "1 September to 18 December 2026"
   * @param removal where the taking off is sent
   */
  public record Row(String name, String dates, String removal) {}
}
