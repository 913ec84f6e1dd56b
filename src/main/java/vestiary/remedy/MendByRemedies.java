package vestiary.remedy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import vestiary.cluster.ReadCluster;
import vestiary.planning.AppliedRemedy;
import vestiary.planning.Clash;
import vestiary.planning.MendClashes;
import vestiary.planning.OfferedRemedy;
import vestiary.planning.SpanToCheck;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Speech;

/** What the pages and the API of clashes ask for. */
@ApplicationScoped
class MendByRemedies implements MendClashes {

  private final OfferRemedies offers;
  private final ApplyRemedy apply;
  private final UndoRemedy undo;
  private final AppliedRemedyRows rows;
  private final ReadCluster cluster;

  MendByRemedies(
      OfferRemedies offers,
      ApplyRemedy apply,
      UndoRemedy undo,
      AppliedRemedyRows rows,
      ReadCluster cluster) {
    this.offers = offers;
    this.apply = apply;
    this.undo = undo;
    this.rows = rows;
    this.cluster = cluster;
  }

  @Override
  public List<OfferedRemedy> offered(Clash clash, SpanToCheck span) {
    return offers.of(clash, span).stream().map(OfferRemedies.Offer::words).toList();
  }

  @Override
  @Transactional
  public List<AppliedRemedy> applied(String clash) {
    ZoneId zone = cluster.cluster().zone();
    return rows.standingFor(clash).stream().map(row -> applied(row, zone)).toList();
  }

  @Override
  public AppliedRemedy apply(String clash, String place, Press press) {
    AppliedRemedyRow row = apply.apply(clash, place(place), press);
    return applied(row, QuarkusTransaction.joiningExisting().call(() -> cluster.cluster().zone()));
  }

  @Override
  public void undo(String clash, String place) {
    undo.undo(clash, place(place));
  }

  private static int place(String text) {
    if (!text.matches("[1-9]\\d{0,3}")) {
      throw new Refused(new Refusal.NotThere("remedy", text));
    }
    return Integer.parseInt(text);
  }

  private static AppliedRemedy applied(AppliedRemedyRow row, ZoneId zone) {
    ZonedDateTime at = row.appliedAt.atZone(zone);
    return new AppliedRemedy(
        row.clash,
        row.place,
        row.about,
        row.title,
        row.sentence,
        "%s, %s".formatted(Speech.dateAndYear(at.toLocalDate()), Speech.clock(at)),
        at.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
  }
}
