package vestiary.serving;

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
import vestiary.people.Person;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** Who serves at a Mass: name one more, take one off, put him back. */
@Path("/masses/{id}/serving")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.ENTER_MASSES)
class ServingPage {

  private final NameServing name;
  private final ServingSheet sheet;
  private final FindPeople people;

  ServingPage(NameServing name, ServingSheet sheet, FindPeople people) {
    this.name = name;
    this.sheet = sheet;
    this.people = people;
  }

  @CheckedTemplate(basePath = "serving")
  static class Templates {
    private Templates() {}

    static native TemplateInstance serving(ServingView view);
  }

  @GET
  @Transactional
  public TemplateInstance one(
      @RestPath String id,
      @QueryParam("done") @DefaultValue("") String done,
      @QueryParam("person") @DefaultValue("") String person,
      @QueryParam("role") @DefaultValue("") String role) {
    return Templates.serving(
        sheet.view(id, ServingDone.of(done, people.findBySlug(person), role), "", Entries.empty()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response add(@RestPath String id, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          Person added =
              name.add(id, new NameServing.Wanted(typed.text("person"), typed.text("role")));
          return PageAnswer.seeOther(
              "/masses/%s/serving?done=named&person=%s".formatted(id, added.slug()));
        },
        refusal ->
            PageAnswer.of(
                refusal.status(),
                Templates.serving(sheet.view(id, ServingDone.NOTHING, refusal.detail(), typed))));
  }

  @POST
  @Path("/{slug}/removal")
  public Response takeOff(@RestPath String id, @RestPath String slug) {
    NameServing.Off off = name.takeOff(id, slug);
    return PageAnswer.seeOther(
        "/masses/%s/serving?done=off&person=%s&role=%s"
            .formatted(id, off.person().slug(), off.as().id()));
  }
}
