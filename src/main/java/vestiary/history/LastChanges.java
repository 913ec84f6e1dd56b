package vestiary.history;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;

/** Who changed a thing last, for pages that say what became of it. */
@ApplicationScoped
@Transactional
public class LastChanges {

  private final AuditRows rows;
  private final NameThings naming;
  private final CurrentVisitor visitor;

  LastChanges(AuditRows rows, NameThings naming, CurrentVisitor visitor) {
    this.rows = rows;
    this.naming = naming;
    this.visitor = visitor;
  }

  /**
   * Who changed it last, and when, for example "Maren Dovecote, 26 November 2026, 10:42"; empty if
   * nobody has since then, or the reader may not look back.
   *
   * @param concern id of the thing
   * @param makers as {@link #makers} has them
   */
  public String last(UUID concern, Instant since, ZoneId zone, UnaryOperator<String> makers) {
    if (!visitor.visitor().may(Action.LOOK_BACK)) {
      return "";
    }
    Sift all = Sift.about(concern.toString());
    Sift later = new Sift(all.concern(), all.who(), since, all.to());
    return rows.newest(later, 0, 1).stream()
        .findFirst()
        .map(row -> makers.apply(row.visitor) + ", " + ValueWords.moment(row.at.atZone(zone)))
        .orElse("");
  }

  /** What those are called now whom the history knows by their marks. */
  public UnaryOperator<String> makers() {
    Map<String, String> names = naming.makers();
    return mark -> NameThings.who(mark, names);
  }
}
