package vestiary.erasure;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** Asks before somebody is removed for good, and does it on one press. */
@Path("/people/{slug}/erasure")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_RECORD)
class ErasurePage {

  private final RemoveForGood remove;
  private final ErasureSheet sheet;

  ErasurePage(RemoveForGood remove, ErasureSheet sheet) {
    this.remove = remove;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "erasure")
  static class Templates {
    private Templates() {}

    static native TemplateInstance erasure(ErasureView view);
  }

  @GET
  @Needs(Action.KEEP_RECORD)
  public TemplateInstance ofPerson(@RestPath String slug) {
    return Templates.erasure(sheet.person(slug, ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response removePerson(@RestPath String slug, MultivaluedMap<String, String> form) {
    return answer(
        form, () -> remove.person(slug), "/people?done=removed", p -> sheet.person(slug, p));
  }

  /** Does it if the box is ticked. */
  static Response answer(
      MultivaluedMap<String, String> form,
      Runnable removal,
      String next,
      Function<String, ErasureView> again) {
    return FormAnswer.of(
        () -> {
          if (!Entries.of(form).isTicked("sure")) {
            throw new Refused(
                Refusal.Unfit.of(
                    "sure", say("Tick the box if you are sure; nothing was removed.")));
          }
          removal.run();
          return PageAnswer.seeOther(next);
        },
        refusal ->
            PageAnswer.of(refusal.status(), Templates.erasure(again.apply(sentence(refusal)))));
  }

  private static String sentence(Refusal refusal) {
    return refusal instanceof Refusal.Unfit unfit
        ? unfit.faults().get(0).sentence()
        : refusal.detail();
  }
}
