package vestiary.people;

import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.web.Entries;

/** Changes what is known of somebody. */
@Path("/people/{slug}/change")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_PEOPLE)
class ChangePersonPage {

  private final EnterPerson enter;
  private final PersonFormSheet sheet;

  ChangePersonPage(EnterPerson enter, PersonFormSheet sheet) {
    this.enter = enter;
    this.sheet = sheet;
  }

  @GET
  @Needs(Action.KEEP_PEOPLE)
  @Transactional
  public TemplateInstance form(@RestPath String slug) {
    return NewPersonPage.Templates.form(sheet.stored(slug));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String slug, MultivaluedMap<String, String> sent) {
    Entries sentForm = Entries.of(sent);
    return NewPersonPage.answer(
        sentForm,
        read -> {
          sheet.refuseIfChangedSince(slug, sentForm.text(PersonFormSheet.SEEN));
          return enter.change(slug, read.person(), read.ministry());
        },
        (typed, problem) -> sheet.typed(slug, typed, problem));
  }
}
