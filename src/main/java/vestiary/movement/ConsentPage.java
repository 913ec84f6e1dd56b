package vestiary.movement;

import static vestiary.web.Speech.say;

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
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.plan.TripWords;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.PageAnswer;

/** What one owner is asked for one Mass, and his answer by one press. */
@Path("/consents/{mass}/{owner}")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.PLAN)
class ConsentPage {

  private final ReadOwners owners;
  private final AnswerForOwner answer;
  private final ErrandWords asked;
  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Frames frames;

  ConsentPage(
      ReadOwners owners,
      AnswerForOwner answer,
      ErrandWords asked,
      ReadPool pool,
      ReadCluster cluster,
      Frames frames) {
    this.owners = owners;
    this.answer = answer;
    this.asked = asked;
    this.pool = pool;
    this.cluster = cluster;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "movement")
  static class Templates {
    private Templates() {}

    static native TemplateInstance consent(ConsentView view);
  }

  @GET
  @Transactional
  public TemplateInstance one(
      @RestPath String mass,
      @RestPath String owner,
      @QueryParam("plan") @DefaultValue("") String plan) {
    return page(mass, owner, plan, "");
  }

  @POST
  @Path("/grant")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response grant(
      @RestPath String mass, @RestPath String owner, MultivaluedMap<String, String> sent) {
    return press(mass, owner, true, sent);
  }

  @POST
  @Path("/refuse")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response refuse(
      @RestPath String mass, @RestPath String owner, MultivaluedMap<String, String> sent) {
    return press(mass, owner, false, sent);
  }

  private Response press(
      String mass, String owner, boolean granted, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          Optional<UUID> plan = answer.answer(mass, owner, granted, request(typed));
          return PageAnswer.seeOther(
              "/consents/%s/%s%s".formatted(mass, owner, plan.map(id -> "?plan=" + id).orElse("")));
        },
        refusal -> PageAnswer.of(refusal.status(), page(mass, owner, "", refusal.detail())));
  }

  private static AnswerForOwner.Request request(Entries typed) {
    Asked asked = new Asked();
    Integer version = asked.number("version", typed.text("version"));
    asked.refuseIfFaulty();
    return new AnswerForOwner.Request(typed.text("by"), version);
  }

  private TemplateInstance page(String mass, String owner, String plan, String problem) {
    OwnerAsked found = owners.get(mass, owner);
    TripWords words =
        new TripWords(
            cluster.churches(),
            pool.pieces(found.mass().start().toInstant()),
            cluster.cluster().zone());
    String date = found.mass().date().toString();
    return Templates.consent(
        new ConsentView(
            frames.of("week", found.address()),
            found.owner(),
            found.about(),
            List.of(
                new Link(say("The journeys"), "/movements?week=" + date),
                new Link(say("The Mass"), "/masses/" + found.mass().id().value())),
            List.of(words.named(found.pieces()).split("; ")),
            asked.owner(found),
            problem,
            found.address(),
            found.version(),
            isId(plan)
                ? new Link(say("What that would change"), "/plans/" + plan)
                : new Link("", "")));
  }

  private static boolean isId(String plan) {
    return plan.matches("[0-9a-f-]{36}");
  }
}
