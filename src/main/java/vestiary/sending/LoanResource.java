package vestiary.sending;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Loans between parishes, what is out, and where things are. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
class LoanResource {

  private final ReadSent sent;
  private final FindItem items;
  private final TellWhere where;
  private final SendingWords words;
  private final Clock clock;

  LoanResource(ReadSent sent, FindItem items, TellWhere where, SendingWords words, Clock clock) {
    this.sent = sent;
    this.items = items;
    this.where = where;
    this.words = words;
    this.clock = clock;
  }

  /**
   * Loans, the latest first.
   *
   * @param open whether those alone that are not back
   * @param parish of the owner or the borrower; not given: all
   */
  @GET
  @Path("/loans")
  @Transactional
  public List<LoanBody> loans(
      @QueryParam("open") @DefaultValue("false") boolean open,
      @QueryParam("parish") @DefaultValue("") String parish) {
    LoanSift sift = new LoanSift(open, parish);
    return bodies(sent.loans().stream().filter(sift::lets).toList());
  }

  /**
   * What is out, what is due first at the head.
   *
   * @param overdue whether that alone which should be back
   */
  @GET
  @Path("/out")
  @Transactional
  public List<LoanBody> out(@QueryParam("overdue") @DefaultValue("false") boolean overdue) {
    return bodies(overdue ? sent.overdue() : sent.open());
  }

  /** Where the set or piece of that code is, piece by piece. */
  @GET
  @Path("/whereabouts/{code}")
  @Transactional
  public List<WhereaboutsBody> whereabouts(@RestPath String code) {
    return where.of(
        items
            .find(code)
            .orElseThrow(() -> new Refused(new Refusal.NotThere("set or piece", code))));
  }

  private List<LoanBody> bodies(List<Sent> found) {
    SendingWords.Said said = words.read();
    Instant now = clock.instant();
    return found.stream().map(one -> LoanBody.of(one, said, now)).toList();
  }
}
