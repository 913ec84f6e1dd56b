package vestiary.people;

import io.quarkus.qute.CheckedTemplate;
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
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** Enters somebody. */
@Path("/people/new")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_PEOPLE)
class NewPersonPage {

  private final EnterPerson enter;
  private final PersonFormSheet sheet;

  NewPersonPage(EnterPerson enter, PersonFormSheet sheet) {
    this.enter = enter;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "people")
  static class Templates {
    private Templates() {}

    static native TemplateInstance form(PersonForm view);
  }

  @GET
  @Needs(Action.KEEP_PEOPLE)
  @Transactional
  public TemplateInstance form() {
    return Templates.form(sheet.fresh(Entries.empty(), ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> sent) {
    return answer(
        Entries.of(sent), read -> enter.enter(read.person(), read.ministry()), sheet::fresh);
  }

  /** Leads to the person, or shows the form again. */
  static Response answer(
      Entries typed,
      Function<PersonEntries, Person> deed,
      BiFunction<Entries, String, PersonForm> again) {
    return FormAnswer.of(
        () ->
            PageAnswer.seeOther(
                "/people/%s?done=saved".formatted(deed.apply(PersonEntries.read(typed)).slug())),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = FormAnswer.problem(refusal, marked, PersonFormSheet.FIELDS);
          return PageAnswer.of(refusal.status(), Templates.form(again.apply(marked, problem)));
        });
  }
}
