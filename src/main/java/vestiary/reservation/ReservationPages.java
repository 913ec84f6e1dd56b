package vestiary.reservation;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** Vestments set aside for a Mass: what is free, what a hold takes from others, what is held. */
@Path(HeldSheet.ADDRESS)
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SET_ASIDE)
class ReservationPages {

  private final ForMass forMass;
  private final HeldSheet held;
  private final ToBeForm toBe;
  private final SetAsideSheet sheet;
  private final ConfirmSheet confirm;
  private final ReserveSets reserve;
  private final ReleaseReservation release;
  private final TellWaiting waiting;
  private final DoneWords done;

  ReservationPages(
      ForMass forMass,
      HeldSheet held,
      ToBeForm toBe,
      SetAsideSheet sheet,
      ConfirmSheet confirm,
      ReserveSets reserve,
      ReleaseReservation release,
      TellWaiting waiting,
      DoneWords done) {
    this.forMass = forMass;
    this.held = held;
    this.toBe = toBe;
    this.sheet = sheet;
    this.confirm = confirm;
    this.reserve = reserve;
    this.release = release;
    this.waiting = waiting;
    this.done = done;
  }

  @CheckedTemplate(basePath = "reservation")
  static class Templates {
    private Templates() {}

    static native TemplateInstance held(HeldView view);

    static native TemplateInstance setAside(SetAsideView view);

    static native TemplateInstance confirm(ConfirmView view);

    static native TemplateInstance toBe(ToBeView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(@Context UriInfo uri) {
    Entries typed = Entries.of(uri.getQueryParameters());
    DoneWords.Done told = done.of(typed);
    return Templates.held(held.week(told.in(typed), told.sentence(), told.undo()));
  }

  @GET
  @Path("/new")
  public Response fresh(@Context UriInfo uri) {
    Entries typed = Entries.of(uri.getQueryParameters());
    if (!ForMass.isSaid(typed)) {
      return PageAnswer.of(200, Templates.toBe(toBe.view(typed, "")));
    }
    return FormAnswer.of(
        () -> PageAnswer.of(200, chooser(typed, "")), refusal -> again(typed, refusal));
  }

  @GET
  @Path("/check")
  public Response check(@Context UriInfo uri) {
    Entries typed = Entries.of(uri.getQueryParameters());
    return FormAnswer.of(
        () ->
            PageAnswer.of(
                200,
                Templates.confirm(
                    confirm.view(forMass.offers(typed), typed, ForMass.isScheduled(typed)))),
        refusal -> again(typed, refusal));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response reserve(MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          ReserveSets.Done made = reserve.reserve(request(typed));
          return PageAnswer.seeOther(
              HeldSheet.ADDRESS
                  + "?held="
                  + made.ids().stream().map(Object::toString).collect(Collectors.joining(",")));
        },
        refusal -> again(typed, refusal));
  }

  @POST
  @Path("/{id}/release")
  public Response release(@RestPath String id) {
    release.release(id);
    waiting.look();
    return PageAnswer.seeOther(HeldSheet.ADDRESS + "?released=" + id);
  }

  @POST
  @Path("/{id}/restoration")
  public Response restore(@RestPath String id) {
    reserve.restore(id);
    return PageAnswer.seeOther(HeldSheet.ADDRESS + "?held=" + id);
  }

  private static ReserveSets.Request request(Entries typed) {
    return new ReserveSets.Request(
        ForMass.isScheduled(typed)
            ? new ReserveSets.Scheduled(typed.text("mass"))
            : new ReserveSets.Unscheduled(ToBeForm.request(typed)),
        typed.all("set"),
        typed.all("piece"));
  }

  /** The choice with what was ticked, or the form of the Mass if it is that which is wrong. */
  private Response again(Entries typed, Refusal refusal) {
    boolean ofMass = refusal.status() == 400 && !ForMass.isScheduled(typed) && !isOfChoice(refusal);
    if (ofMass) {
      Entries marked = FormAnswer.mark(typed, refusal, ToBeForm.NAMES);
      String problem = FormAnswer.problem(refusal, marked, ToBeForm.FIELDS);
      return PageAnswer.of(refusal.status(), Templates.toBe(toBe.view(marked, problem)));
    }
    return PageAnswer.of(refusal.status(), chooser(typed, refusal.detail()));
  }

  private static boolean isOfChoice(Refusal refusal) {
    return refusal.faults().stream()
        .allMatch(fault -> fault.field().equals("set") || fault.field().equals("piece"));
  }

  private TemplateInstance chooser(Entries typed, String problem) {
    return Templates.setAside(
        sheet.view(forMass.offers(typed), typed, ForMass.isScheduled(typed), problem));
  }
}
