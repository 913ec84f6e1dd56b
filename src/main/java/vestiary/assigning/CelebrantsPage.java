package vestiary.assigning;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Asked;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** Who celebrates where: looked at, proposed, named, undone. */
@Path("/celebrants")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.ENTER_MASSES)
class CelebrantsPage {

  private final ReadScene read;
  private final ProposeCelebrants propose;
  private final AssignCelebrants assign;
  private final DoneWords done;
  private final CelebrantsSheet sheet;
  private final ProposalSheet proposal;
  private final FindPeople people;
  private final Clock clock;

  CelebrantsPage(
      ReadScene read,
      ProposeCelebrants propose,
      AssignCelebrants assign,
      DoneWords done,
      CelebrantsSheet sheet,
      ProposalSheet proposal,
      FindPeople people,
      Clock clock) {
    this.read = read;
    this.propose = propose;
    this.assign = assign;
    this.done = done;
    this.sheet = sheet;
    this.proposal = proposal;
    this.people = people;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "assigning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance celebrants(CelebrantsView view);

    static native TemplateInstance proposal(ProposalView view);
  }

  /** Leads to the week that is on. */
  @GET
  public Response now() {
    LocalDate today = LocalDate.now(clock.withZone(read.zone()));
    return PageAnswer.seeOther(Dates.week(today).address());
  }

  /** The week of a date, or the dates from it to another. */
  @GET
  @Path("/{date}")
  public TemplateInstance dates(
      @RestPath String date, @QueryParam("to") String to, @QueryParam("done") String id) {
    Dates dates = to == null || to.isBlank() ? Dates.week(Dates.date(date)) : Dates.parse(date, to);
    return Templates.celebrants(
        sheet.of(read.between(dates.first(), dates.last()), done.of(id, dates.address())));
  }

  /** What would be named on some dates; of one priest alone if he is left out. */
  @GET
  @Path("/proposal")
  public TemplateInstance proposal(
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      @QueryParam("without") String without) {
    Dates dates = Dates.parse(from, to);
    String span = Speech.span(dates.first(), dates.last());
    String address = "/celebrants/proposal?" + dates.query();
    if (without == null || without.isBlank()) {
      return Templates.proposal(
          proposal.of(
              propose.propose(dates.first(), dates.last()),
              say("A proposal for %s", span),
              address));
    }
    Person person = people.get(without);
    return Templates.proposal(
        proposal.of(
            propose.proposeWithout(person.id(), dates.first(), dates.last()),
            say("Without %s, %s", person.inWords(), span),
            address + "&without=" + person.slug()));
  }

  /** Names celebrants, all of them or none. */
  @POST
  @Path("/assignments")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response assign(
      @FormParam("assign") List<String> assigned,
      @FormParam("inPlace") String inPlace,
      @FormParam("back") String back) {
    Asked asked = new Asked();
    if (assigned == null || assigned.isEmpty()) {
      asked.fault("assign", say("No Mass is named."));
    }
    asked.refuseIfFaulty();
    UUID id =
        assign.assign(assigned.stream().map(Assigned::parse).toList(), "true".equals(inPlace));
    return to(back, id.toString());
  }

  @POST
  @Path("/assignments/{id}/undo")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response undo(@RestPath String id, @FormParam("back") String back) {
    assign.undo(id);
    return to(back, id);
  }

  /** Back to one of our own pages, which tells what was done. */
  private static Response to(String back, String id) {
    boolean ours =
        back != null
            && back.matches(
                "/(celebrants|masses|review)/[-0-9a-z]{1,40}(/celebrant)?(\\?to=[-0-9]{10})?");
    return PageAnswer.seeOther(
        UriBuilder.fromUri(ours ? back : "/celebrants").queryParam("done", id).build());
  }
}
