package vestiary.review;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** The pastor's week: looked at, signed, and looked back at. */
@Path("/review")
@Produces(MediaType.TEXT_HTML)
class ReviewPage {

  private static final List<String> FIELDS = List.of("note");
  private static final int LONGEST_SEEN = 64;

  private final ReadReview reviews;
  private final SignWeek sign;
  private final ReviewSheet sheet;
  private final ReadCluster cluster;
  private final Clock clock;

  ReviewPage(
      ReadReview reviews, SignWeek sign, ReviewSheet sheet, ReadCluster cluster, Clock clock) {
    this.reviews = reviews;
    this.sign = sign;
    this.sheet = sheet;
    this.cluster = cluster;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "review")
  static class Templates {
    private Templates() {}

    static native TemplateInstance review(ReviewView view);
  }

  /** The week that is on; on its last evening the next one, which there is still time to mend. */
  @GET
  public TemplateInstance coming() {
    LocalDate tomorrow = LocalDate.now(clock.withZone(cluster.cluster().zone())).plusDays(1);
    return page(WeekAddress.monday(tomorrow), "", Entries.empty(), "");
  }

  @GET
  @Path("/{date}")
  public TemplateInstance week(@RestPath String date, @QueryParam("done") String done) {
    return page(WeekAddress.ofDate(date), done, Entries.empty(), "");
  }

  @POST
  @Path("/{date}")
  @Needs(Action.SIGN_WEEKS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response sign(@RestPath String date, MultivaluedMap<String, String> form) {
    LocalDate monday = WeekAddress.ofDate(date);
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          Asked asked = new Asked();
          Integer turn = asked.number("turn", typed.text("turn"));
          String seen = asked.needed("seen", typed.text("seen"), LONGEST_SEEN);
          asked.refuseIfFaulty();
          sign.sign(
              monday, new SignWeek.Request(typed.text("note"), seen, turn == null ? 0 : turn));
          return PageAnswer.seeOther("/review/" + monday);
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = FormAnswer.problem(refusal, marked, FIELDS);
          return PageAnswer.of(refusal.status(), page(monday, "", marked, problem));
        });
  }

  @GET
  @Transactional
  @Path("/{date}/signed/{id}")
  public TemplateInstance asSigned(@RestPath String date, @RestPath String id) {
    WeekAddress.ofDate(date);
    return Templates.review(sheet.asSigned(reviews.kept(id, cluster.cluster().zone())));
  }

  /** In no transaction of its own: while celebrants are divided no connection is held. */
  private TemplateInstance page(LocalDate monday, String done, Entries typed, String problem) {
    Review review = reviews.of(monday);
    return Templates.review(sheet.now(review, sheet.standIns(review), done, typed, problem));
  }
}
