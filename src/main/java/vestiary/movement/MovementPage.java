package vestiary.movement;

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
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.asking.AnswerAsking;
import vestiary.asking.AskCarrier;
import vestiary.people.FindPeople;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;

/** One journey: whom it is given to, and his answer by one press. */
@Path("/movements/{id}")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.PLAN)
class MovementPage {

  private static final List<String> FIELDS = List.of("carrier", "by", "mail");

  private final ReadErrands errands;
  private final Carry carry;
  private final ErrandWords asked;
  private final AskByMail mail;
  private final ReadPool pool;
  private final FindPeople people;
  private final Frames frames;
  private final Clock clock;
  private final SendRiding sendRiding;

  MovementPage(
      ReadErrands errands,
      Carry carry,
      ErrandWords asked,
      AskByMail mail,
      ReadPool pool,
      FindPeople people,
      Frames frames,
      Clock clock,
      SendRiding sendRiding) {
    this.sendRiding = sendRiding;
    this.errands = errands;
    this.carry = carry;
    this.asked = asked;
    this.mail = mail;
    this.pool = pool;
    this.people = people;
    this.frames = frames;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "movement")
  static class Templates {
    private Templates() {}

    static native TemplateInstance movement(MovementView view);
  }

  @GET
  @Transactional
  public TemplateInstance one(@RestPath String id) {
    return page(id, Entries.empty(), "");
  }

  @POST
  @Path("/ask")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response ask(@RestPath String id, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          carry.ask(
              id,
              new AskCarrier.Request(typed.text("carrier"), typed.text("by"), typed.text("mail")));
          return to(id);
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = FormAnswer.problem(refusal, marked, FIELDS);
          return PageAnswer.of(refusal.status(), page(id, marked, problem));
        });
  }

  @POST
  @Path("/accept")
  @Needs(Action.ANSWER_CARRYING)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response accept(@RestPath String id, MultivaluedMap<String, String> sent) {
    return press(id, sent, carry::accept);
  }

  @POST
  @Path("/decline")
  @Needs(Action.ANSWER_CARRYING)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response decline(@RestPath String id, MultivaluedMap<String, String> sent) {
    return press(id, sent, carry::decline);
  }

  @POST
  @Path("/done")
  @Needs(Action.ANSWER_CARRYING)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response done(@RestPath String id, MultivaluedMap<String, String> sent) {
    return press(id, sent, carry::done);
  }

  /** All that rides is gone: out, for where it goes. */
  @POST
  @Path("/gone")
  @Needs(Action.SEND)
  public Response gone(@RestPath String id) {
    return ride(id, sendRiding::gone);
  }

  /** All that rides is at home again. */
  @POST
  @Path("/home")
  @Needs(Action.SEND)
  public Response home(@RestPath String id) {
    return ride(id, sendRiding::home);
  }

  private Response ride(String id, Consumer<String> deed) {
    return FormAnswer.of(
        () -> {
          deed.accept(id);
          return to(id);
        },
        refusal -> PageAnswer.of(refusal.status(), page(id, Entries.empty(), refusal.detail())));
  }

  @POST
  @Path("/withdraw")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response withdraw(@RestPath String id, MultivaluedMap<String, String> sent) {
    return press(id, sent, carry::withdraw);
  }

  private Response press(
      String id,
      MultivaluedMap<String, String> sent,
      BiConsumer<String, AnswerAsking.Request> deed) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          deed.accept(id, request(typed));
          return to(id);
        },
        refusal -> PageAnswer.of(refusal.status(), page(id, Entries.empty(), refusal.detail())));
  }

  private static AnswerAsking.Request request(Entries typed) {
    Asked asked = new Asked();
    Integer version = asked.number("version", typed.text("version"));
    asked.refuseIfFaulty();
    return new AnswerAsking.Request(typed.text("by"), version);
  }

  private static Response to(String id) {
    return PageAnswer.seeOther("/movements/" + id);
  }

  private TemplateInstance page(String id, Entries typed, String problem) {
    ReadErrands.Found found = errands.get(id);
    return Templates.movement(
        new MovementSheet(
                found,
                pool.pieces(clock.instant()),
                people.all(),
                asked,
                mail.isOn(),
                mail::hasFailed,
                sendRiding.offered(found))
            .view(frames.of("week", "/movements/" + id), typed, problem));
  }
}
