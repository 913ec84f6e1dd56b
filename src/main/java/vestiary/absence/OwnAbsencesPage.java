package vestiary.absence;

import static vestiary.web.Speech.say;

import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.access.Visitor;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.users.PersonOfUser;
import vestiary.web.Entries;

/** When one is away oneself. */
@Path("/mine/absences")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SAY_OWN_ABSENCE)
class OwnAbsencesPage {

  private static final String PLACE = "/mine/absences";

  private final AnswerAbsence answer;
  private final PersonAbsencesSheet sheet;
  private final CurrentVisitor current;
  private final PersonOfUser who;
  private final FindPeople people;

  OwnAbsencesPage(
      AnswerAbsence answer,
      PersonAbsencesSheet sheet,
      CurrentVisitor current,
      PersonOfUser who,
      FindPeople people) {
    this.answer = answer;
    this.sheet = sheet;
    this.current = current;
    this.who = who;
    this.people = people;
  }

  @GET
  @Needs(Action.SAY_OWN_ABSENCE)
  @Transactional
  public TemplateInstance all(
      @QueryParam("entered") @DefaultValue("") String entered,
      @QueryParam("done") @DefaultValue("") String done) {
    return PersonAbsencesPage.Templates.person(
        sheet.own(self(), AnswerAbsence.note(entered, done), Entries.empty()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> sent) {
    return answer.planned(self().slug(), PLACE, sheet::own, Entries.of(sent));
  }

  /** From this moment on, on one press. */
  @POST
  @Path("/ill")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response ill(MultivaluedMap<String, String> sent) {
    return answer.ill(self().slug(), PLACE, sheet::own, Entries.of(sent));
  }

  @POST
  @Path("/{id}/end")
  public Response end(@RestPath String id) {
    return answer.end(self().slug(), id, PLACE);
  }

  /** Takes back what was just entered. */
  @POST
  @Path("/{id}/removal")
  public Response remove(@RestPath String id) {
    return answer.remove(self().slug(), id, PLACE);
  }

  private Person self() {
    if (current.visitor() instanceof Visitor.User user) {
      return who.find(user.id()).flatMap(people::find).orElseThrow(OwnAbsencesPage::nobody);
    }
    throw nobody();
  }

  private static Refused nobody() {
    return new Refused(
        new Refusal.Beyond(
            say(
                "Nobody of the schedule is named for you yet. Whoever keeps the users of your cluster can do it under Settings, Who may come in.")));
  }
}
