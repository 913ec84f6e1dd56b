package vestiary.absence;

import io.quarkus.qute.CheckedTemplate;
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
import vestiary.access.Needs;
import vestiary.people.FindPeople;
import vestiary.web.Entries;

/** When somebody is away, entered by those who keep people. */
@Path("/people/{slug}/absences")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_PEOPLE)
class PersonAbsencesPage {

  private final AnswerAbsence answer;
  private final PersonAbsencesSheet sheet;
  private final FindPeople people;

  PersonAbsencesPage(AnswerAbsence answer, PersonAbsencesSheet sheet, FindPeople people) {
    this.answer = answer;
    this.sheet = sheet;
    this.people = people;
  }

  @CheckedTemplate(basePath = "absence")
  static class Templates {
    private Templates() {}

    static native TemplateInstance person(PersonAbsencesView view);
  }

  @GET
  @Needs(Action.KEEP_PEOPLE)
  @Transactional
  public TemplateInstance all(
      @RestPath String slug,
      @QueryParam("entered") @DefaultValue("") String entered,
      @QueryParam("done") @DefaultValue("") String done) {
    return Templates.person(
        sheet.of(people.get(slug), AnswerAbsence.note(entered, done), Entries.empty()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(@RestPath String slug, MultivaluedMap<String, String> sent) {
    return answer.planned(slug, place(slug), sheet::of, Entries.of(sent));
  }

  /** From this moment on, on one press. */
  @POST
  @Path("/ill")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response ill(@RestPath String slug, MultivaluedMap<String, String> sent) {
    return answer.ill(slug, place(slug), sheet::of, Entries.of(sent));
  }

  @POST
  @Path("/{id}/end")
  public Response end(@RestPath String slug, @RestPath String id) {
    return answer.end(slug, id, place(slug));
  }

  /** Takes back what was just entered. */
  @POST
  @Path("/{id}/removal")
  public Response remove(@RestPath String slug, @RestPath String id) {
    return answer.remove(slug, id, place(slug));
  }

  private static String place(String slug) {
    return "/people/%s/absences".formatted(slug);
  }
}
