package vestiary.schedule;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
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
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.Brings;
import vestiary.web.Entries;

/** The form of a Mass: enter one, change it, cancel it, put it back. */
@Path("/masses")
@Produces(MediaType.TEXT_HTML)
class MassPage {

  private final ReadMasses read;
  private final SaveMass save;
  private final MassFormView form;
  private final MassWarnings warnings;

  MassPage(ReadMasses read, SaveMass save, MassFormView form, MassWarnings warnings) {
    this.read = read;
    this.save = save;
    this.form = form;
    this.warnings = warnings;
  }

  @CheckedTemplate(basePath = "schedule")
  static class Templates {
    private Templates() {}

    static native TemplateInstance mass(MassForm view);

    static native TemplateInstance choices(MassChoices choices);
  }

  @GET
  @Path("/new")
  public TemplateInstance blank(@Context UriInfo uri) {
    return Templates.mass(form.ofNew(MassInput.of(single(uri.getQueryParameters())), ""));
  }

  @GET
  @Path("/form-choices")
  public TemplateInstance choices(@Context UriInfo uri) {
    return Templates.choices(form.choices(MassInput.of(single(uri.getQueryParameters()))));
  }

  @GET
  @Path("/{id}")
  public TemplateInstance one(@RestPath String id, @QueryParam("saved") String saved) {
    DatedMass mass = read.get(id);
    MassForm.Saved told = saved == null ? MassForm.Saved.NONE : told(mass);
    return Templates.mass(form.of(mass, MassInput.from(mass), told, ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> typed) {
    MassInput input = MassInput.of(single(typed));
    if (typed.containsKey("again")) {
      return page(200, form.ofNew(input, ""));
    }
    try {
      return seeOther("/masses/%s?saved=yes".formatted(save.enter(request(input, List.of()))));
    } catch (Refused refused) {
      Refusal refusal = refused.refusal();
      MassInput marked = input.with(refusal.faults());
      return page(refusal.status(), form.ofNew(marked, problem(refusal, marked)));
    }
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String id, MultivaluedMap<String, String> typed) {
    MassInput input = MassInput.of(single(typed));
    DatedMass before = read.get(id);
    if (typed.containsKey("again")) {
      return page(200, form.of(before, input, MassForm.Saved.NONE, ""));
    }
    try {
      save.change(id, request(input, before.brings()));
      return seeOther("/masses/%s?saved=yes".formatted(id));
    } catch (Refused refused) {
      Refusal refusal = refused.refusal();
      MassInput marked = input.with(refusal.faults());
      return page(
          refusal.status(), form.of(before, marked, MassForm.Saved.NONE, problem(refusal, marked)));
    }
  }

  @POST
  @Path("/{id}/cancellation")
  public Response cancel(@RestPath String id) {
    save.cancel(id);
    return seeOther("/masses/" + id);
  }

  @POST
  @Path("/{id}/restoration")
  public Response restore(@RestPath String id) {
    save.restore(id);
    return seeOther("/masses/%s?saved=yes".formatted(id));
  }

  private MassForm.Saved told(DatedMass mass) {
    var found = warnings.of(mass);
    return new MassForm.Saved(
        found.isEmpty() ? "Saved. Nothing stands in its way." : "Saved. Look at this:", found);
  }

  /** What was typed as a request; whoever typed two things wrong is told of both at once. */
  private SaveMass.Request request(MassInput input, List<Brings> before) {
    Asked asked = new Asked();
    SaveMass.Request request = input.toRequest(before, asked);
    if (asked.isFaulty()) {
      save.findFaults(request).forEach(f -> asked.fault(f.field(), f.sentence()));
    }
    asked.refuseIfFaulty();
    return request;
  }

  private static String problem(Refusal refusal, MassInput marked) {
    return FormAnswer.problem(
        refusal, Entries.empty().withErrors(marked.errors()), MassInput.FIELDS);
  }

  private static Response page(int status, MassForm view) {
    return Response.status(status).entity(Templates.mass(view)).build();
  }

  private static Response seeOther(String address) {
    return Response.seeOther(URI.create(address)).build();
  }

  private static Map<String, String> single(MultivaluedMap<String, String> typed) {
    Map<String, String> fields = new HashMap<>();
    typed.forEach((name, values) -> fields.put(name, values.get(0)));
    return fields;
  }
}
