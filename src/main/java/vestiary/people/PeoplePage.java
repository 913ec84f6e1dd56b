package vestiary.people;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import io.quarkus.narayana.jta.QuarkusTransaction;
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
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** Who appears in schedules, and one of them. */
@Path("/people")
@Produces(MediaType.TEXT_HTML)
class PeoplePage {

  private static final Map<String, String> DONE =
      Map.of("height", word("Kept."), "saved", word("Saved."));

  private final FindPeople people;
  private final PeopleSheet everybody;
  private final PersonFacts facts;
  private final ReadAbsences absences;
  private final ReadCluster cluster;
  private final Clock clock;
  private final KeepHeight height;
  private final CurrentVisitor visitor;
  private final Frames frames;

  PeoplePage(
      FindPeople people,
      PeopleSheet everybody,
      PersonFacts facts,
      ReadAbsences absences,
      ReadCluster cluster,
      Clock clock,
      KeepHeight height,
      CurrentVisitor visitor,
      Frames frames) {
    this.everybody = everybody;
    this.facts = facts;
    this.absences = absences;
    this.cluster = cluster;
    this.clock = clock;
    this.height = height;
    this.visitor = visitor;
    this.people = people;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "people")
  static class Templates {
    private Templates() {}

    static native TemplateInstance people(PeopleView view);

    static native TemplateInstance person(PersonView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.people(everybody.view(done.equals("removed") ? say("Removed for good.") : ""));
  }

  @GET
  @Path("/{slug}")
  @Transactional
  public TemplateInstance one(
      @RestPath String slug, @QueryParam("done") @DefaultValue("") String done) {
    return Templates.person(
        view(
            slug,
            say(DONE.getOrDefault(done, "")),
            visitor.visitor().may(Action.SET_OUT)
                ? height.find(slug).map(String::valueOf).map(Field::of).orElse(Field.empty())
                : Field.empty()));
  }

  /** Keeps how tall a priest, deacon or bishop is; an empty field forgets it. */
  @POST
  @Path("/{slug}/height")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Needs(Action.SET_OUT)
  public Response keepHeight(@RestPath String slug, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          Asked asked = new Asked();
          Integer tall = asked.number("height", typed.text("height"));
          asked.refuseIfFaulty();
          height.keep(slug, tall);
          return PageAnswer.seeOther("/people/%s?done=height".formatted(slug));
        },
        refusal ->
            PageAnswer.of(
                refusal.status(),
                Templates.person(
                    view(slug, "", new Field(typed.text("height"), refusal.detail())))));
  }

  private PersonView view(String slug, String done, Field tall) {
    return QuarkusTransaction.joiningExisting()
        .call(
            () -> {
              Person person = people.get(slug);
              return new PersonView(
                  frames.of("settings", address(person)),
                  person.calledName(),
                  Speech.sentence(about(person)),
                  person.isVisiting(),
                  facts.ofChild(person),
                  facts.of(person),
                  away(person),
                  KeepHeight.isAskedOf(person.role()) ? address(person) + "/height" : "",
                  done,
                  tall,
                  address(person));
            });
  }

  private List<String> away(Person person) {
    ZoneId zone = cluster.cluster().zone();
    return absences.of(person.id(), clock.instant()).stream()
        .map(one -> AbsenceWords.span(one, zone))
        .toList();
  }

  private static String address(Person person) {
    return "/people/" + person.slug();
  }

  private static String about(Person person) {
    return person.isVisiting() ? say("%s, from outside", role(person)) : role(person);
  }

  private static String role(Person person) {
    return Speech.noun(1, person.role().id());
  }
}
