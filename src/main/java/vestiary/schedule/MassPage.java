package vestiary.schedule;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** The form of a Mass: enter one, change it, cancel it, put it back. */
@Path("/masses")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.ENTER_MASSES)
class MassPage {

  /** Sent by the button that, without JavaScript, asks the calendar again. */
  private static final String AGAIN = "again";

  private final ReadMasses read;
  private final SaveMass save;
  private final MassFormView form;
  private final MassWarnings warnings;
  private final Newcomers newcomers;

  MassPage(
      ReadMasses read,
      SaveMass save,
      MassFormView form,
      MassWarnings warnings,
      Newcomers newcomers) {
    this.read = read;
    this.save = save;
    this.form = form;
    this.warnings = warnings;
    this.newcomers = newcomers;
  }

  @CheckedTemplate(basePath = "schedule")
  static class Templates {
    private Templates() {}

    static native TemplateInstance mass(MassForm view);

    static native TemplateInstance choices(MassChoices choices);
  }

  @GET
  @Transactional
  @Path("/new")
  @Needs(Action.ENTER_MASSES)
  public TemplateInstance fresh(@Context UriInfo uri) {
    return Templates.mass(form.fresh(Entries.of(uri.getQueryParameters()), ""));
  }

  @GET
  @Transactional
  @Path("/form-choices")
  public TemplateInstance choices(@Context UriInfo uri) {
    return Templates.choices(form.choices(Entries.of(uri.getQueryParameters())));
  }

  @GET
  @Transactional
  @Path("/{id}")
  public TemplateInstance one(
      @RestPath String id,
      @QueryParam("saved") String saved,
      @QueryParam("entered") List<String> entered) {
    DatedMass mass = read.get(id);
    MassForm.Saved told = saved == null ? MassForm.Saved.NONE : told(mass, entered);
    return Templates.mass(form.stored(mass, told));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    if (sent.containsKey(AGAIN)) {
      return PageAnswer.of(200, Templates.mass(form.fresh(typed, "")));
    }
    return FormAnswer.of(
        () -> {
          Set<UUID> known = newcomers.known();
          return saved(save.enter(request(typed, MassEntries.Before.NOTHING)), known);
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, MassEntries.NAMES);
          return again(refusal, form.fresh(marked, problem(refusal, marked)));
        });
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String id, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    DatedMass before = read.get(id);
    if (sent.containsKey(AGAIN)) {
      return PageAnswer.of(200, Templates.mass(form.typed(before, typed, "")));
    }
    return FormAnswer.of(
        () -> {
          Set<UUID> known = newcomers.known();
          save.change(id, request(typed, MassEntries.Before.of(before)));
          return saved(id, known);
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, MassEntries.NAMES);
          return again(refusal, form.typed(before, marked, problem(refusal, marked)));
        });
  }

  @POST
  @Path("/{id}/cancellation")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response cancel(@RestPath String id, MultivaluedMap<String, String> sent) {
    save.cancel(id, Entries.of(sent).text("takenOverBy"));
    return PageAnswer.seeOther("/masses/" + id);
  }

  @POST
  @Path("/{id}/restoration")
  public Response restore(@RestPath String id) {
    save.restore(id);
    return saved(id);
  }

  @POST
  @Path("/{id}/return")
  public Response moveBack(@RestPath String id) {
    save.moveBack(id);
    return saved(id);
  }

  private MassForm.Saved told(DatedMass mass, List<String> entered) {
    List<MassForm.Found> found = warnings.of(mass);
    return new MassForm.Saved(
        found.isEmpty() ? say("Saved. Nothing stands in its way.") : say("Saved. Look at this:"),
        newcomers.told(mass, entered),
        found);
  }

  /** What was typed as a request; whoever typed two things wrong is told of both at once. */
  private SaveMass.Request request(Entries typed, MassEntries.Before before) {
    Asked asked = new Asked();
    SaveMass.Request request = MassEntries.request(typed, before, asked);
    if (asked.isFaulty()) {
      save.findFaults(request).forEach(f -> asked.fault(f.field(), f.sentence()));
    }
    asked.refuseIfFaulty();
    return request;
  }

  private static String problem(Refusal refusal, Entries marked) {
    return FormAnswer.problem(refusal, marked, MassEntries.FIELDS);
  }

  private static Response again(Refusal refusal, MassForm view) {
    return PageAnswer.of(refusal.status(), Templates.mass(view));
  }

  private Response saved(String id, Set<UUID> known) {
    UriBuilder page = UriBuilder.fromPath("/masses/{id}").queryParam("saved", "yes");
    newcomers.since(known, read.get(id)).forEach(slug -> page.queryParam("entered", slug));
    return PageAnswer.seeOther(page.build(id));
  }

  private static Response saved(String id) {
    return PageAnswer.seeOther(
        UriBuilder.fromPath("/masses/{id}").queryParam("saved", "yes").build(id));
  }
}
