package vestiary.device;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.HttpServerRequest;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.access.SessionCookie;
import vestiary.cluster.Church;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** The shared devices of sacristies: let stay, shut out, and who acts on them. */
@Path("/devices")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.LET_DEVICES)
class DevicesPage {

  private static final Map<String, String> DONE =
      Map.of(
          "ended",
          Speech.word("Shut out; its next press is refused."),
          "on",
          Speech.word("It goes on."));

  private final SharedDevicesOfCluster devices;
  private final Hands hands;
  private final DeviceSheets sheets;
  private final CurrentVisitor visitor;
  private final SessionCookie cookie;

  DevicesPage(
      SharedDevicesOfCluster devices,
      Hands hands,
      DeviceSheets sheets,
      CurrentVisitor visitor,
      SessionCookie cookie) {
    this.devices = devices;
    this.hands = hands;
    this.sheets = sheets;
    this.visitor = visitor;
    this.cookie = cookie;
  }

  @CheckedTemplate(basePath = "device")
  static class Templates {
    private Templates() {}

    static native TemplateInstance devices(DevicesView view);

    static native TemplateInstance hands(HandsView view);

    static native TemplateInstance who(WhoView view);

    static native TemplateInstance stopped(StoppedView view);
  }

  @GET
  @Needs(Action.LET_DEVICES)
  @Transactional
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.devices(
        sheets.all(Entries.empty(), Speech.say(DONE.getOrDefault(done, "")), ""));
  }

  /** Whoever pressed is signed out on it, so that nobody acts in their name. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response letStay(MultivaluedMap<String, String> form, @Context HttpServerRequest request) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          Church church = sheets.church(typed.text("church"));
          return Response.fromResponse(PageAnswer.seeOther("/week?done=device"))
              .cookie(
                  cookie.ofDevice(devices.let(church.id().value(), typed.text("name")), request),
                  cookie.gone(request))
              .build();
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = FormAnswer.problem(refusal, marked, List.of("name", "church"));
          return PageAnswer.of(
              refusal.status(), Templates.devices(sheets.all(marked, "", problem)));
        });
  }

  @POST
  @Path("/{id}/end")
  public Response shutOut(@RestPath String id) {
    devices.shutOut(id);
    return PageAnswer.seeOther("/devices?done=ended");
  }

  @POST
  @Path("/{id}/go-on")
  public Response letGoOn(@RestPath String id) {
    devices.letGoOn(id);
    return PageAnswer.seeOther("/devices?done=on");
  }

  @GET
  @Path("/churches/{slug}")
  @Needs(Action.LET_DEVICES)
  @Transactional
  public TemplateInstance handsOf(@RestPath String slug) {
    Church church = own(slug);
    return Templates.hands(sheets.hands(church, Entries.empty(), ""));
  }

  @POST
  @Path("/churches/{slug}/hands")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response addHand(@RestPath String slug, MultivaluedMap<String, String> form) {
    Church church = own(slug);
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          hands.add(church.id().value(), typed.text("name"), typed.text("code"));
          return PageAnswer.seeOther("/devices/churches/" + church.slug());
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of()).with("code", "");
          String problem = FormAnswer.problem(refusal, marked, List.of("name", "code"));
          return PageAnswer.of(
              refusal.status(), Templates.hands(sheets.hands(church, marked, problem)));
        });
  }

  @POST
  @Path("/churches/{slug}/hands/{id}/removal")
  public Response removeHand(@RestPath String slug, @RestPath String id) {
    Church church = own(slug);
    hands.remove(church.id().value(), id);
    return PageAnswer.seeOther("/devices/churches/" + church.slug());
  }

  private Church own(String slug) {
    Church church = sheets.church(slug);
    visitor.refuseOutsideOwn(Action.LET_DEVICES, church.id().value());
    return church;
  }
}
