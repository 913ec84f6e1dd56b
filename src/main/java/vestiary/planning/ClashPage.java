package vestiary.planning;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.PageAnswer;

/** One clash: its proof, what mends it, one press to do that, and one to undo it. */
@Path("/clashes/{date}/{id}")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.PLAN)
class ClashPage {

  private final FindClash find;
  private final MendClashes mend;
  private final FindPeople people;
  private final Frames frames;

  ClashPage(FindClash find, MendClashes mend, FindPeople people, Frames frames) {
    this.find = find;
    this.mend = mend;
    this.people = people;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "planning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance clash(ClashView view);

    static native TemplateInstance mended(MendedView view);
  }

  @GET
  public TemplateInstance one(@RestPath String date, @RestPath String id) {
    return page(date, id, "");
  }

  @POST
  @Path("/remedies/{n}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response apply(
      @RestPath String date,
      @RestPath String id,
      @RestPath String n,
      @FormParam("fingerprint") String fingerprint,
      @FormParam("person") String person) {
    return press(
        date,
        id,
        () -> {
          Asked asked = new Asked();
          String name = asked.text("person", person, ClashResource.LONGEST_NAME);
          String read = asked.text("fingerprint", fingerprint);
          asked.refuseIfFaulty();
          mend.apply(id, n, new MendClashes.Press(read, "", name));
        });
  }

  @POST
  @Path("/remedies/{n}/undo")
  public Response undo(@RestPath String date, @RestPath String id, @RestPath String n) {
    return press(date, id, () -> mend.undo(id, n));
  }

  private Response press(String date, String id, Runnable deed) {
    return FormAnswer.of(
        () -> {
          deed.run();
          return PageAnswer.seeOther(address(date, id) + "#mends");
        },
        refusal -> again(date, id, refusal));
  }

  /** Where the clash is gone meanwhile there is no page to be shown again. */
  private Response again(String date, String id, Refusal refusal) {
    if (find.find(id).isEmpty() && mend.applied(id).isEmpty()) {
      throw new Refused(refusal);
    }
    return PageAnswer.of(refusal.status(), page(date, id, refusal.detail()));
  }

  private TemplateInstance page(String date, String id, String problem) {
    Optional<FindClash.Found> found = find.find(id);
    List<AppliedRemedy> applied = mend.applied(id);
    if (found.isPresent()) {
      Clash clash = found.get().clash();
      MendingView mending =
          mending(date, id, mend.offered(clash, found.get().span()), applied, clash, problem);
      return Templates.clash(
          new ClashSheet(found.get().span(), clash)
              .view(frames.of("clashes", clash.address()), mending));
    }
    if (applied.isEmpty()) {
      throw new Refused(new Refusal.NotThere("clash", id));
    }
    return Templates.mended(
        new MendedView(
            frames.of("clashes", address(date, id)),
            applied.get(0).about(),
            applied.get(0).title(),
            turn(LocalDate.parse(id.substring(0, 10))),
            new MendingView(
                address(date, id) + "/remedies", List.of(), applied, List.of(), "", problem)));
  }

  private MendingView mending(
      String date,
      String id,
      List<OfferedRemedy> offered,
      List<AppliedRemedy> applied,
      Clash clash,
      String problem) {
    boolean nothing = offered.isEmpty() && clash.findProof().isPresent();
    return new MendingView(
        address(date, id) + "/remedies",
        offered,
        applied,
        people.all().stream()
            .filter(p -> p.role() != PersonRole.BISHOP)
            .map(ClashPage::called)
            .toList(),
        nothing
            ? say(
                "Nothing within the cluster mends this alone. Change the Masses, or put two things together.")
            : "",
        problem);
  }

  private static String called(Person person) {
    return (person.title() + " " + person.name()).strip();
  }

  private static String address(String date, String id) {
    return "/clashes/%s/%s".formatted(date, id);
  }

  private static List<Link> turn(LocalDate date) {
    return new ArrayList<>(
        List.of(
            new Link(say("The week"), "/week/" + WeekSheet.monday(date)),
            new Link(say("The day"), "/day/" + date),
            new Link(say("The journeys"), "/movements?week=" + WeekSheet.monday(date))));
  }
}
