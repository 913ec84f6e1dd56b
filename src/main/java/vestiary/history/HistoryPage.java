package vestiary.history;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.history.HistorySheet.Topic;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.users.UserNames;
import vestiary.web.Entries;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Who changed what: in the whole cluster, or of one thing, person or church. */
@Path("/history")
@Produces(MediaType.TEXT_HTML)
class HistoryPage {

  private static final String ALL = "/history";

  private final HistorySheet sheet;
  private final ReadPool pool;
  private final ReadMasses masses;
  private final FindPeople people;
  private final UserNames users;
  private final ReadCluster cluster;

  HistoryPage(
      HistorySheet sheet,
      ReadPool pool,
      ReadMasses masses,
      FindPeople people,
      UserNames users,
      ReadCluster cluster) {
    this.sheet = sheet;
    this.pool = pool;
    this.masses = masses;
    this.people = people;
    this.users = users;
    this.cluster = cluster;
  }

  @CheckedTemplate(basePath = "history")
  static class Templates {
    private Templates() {}

    static native TemplateInstance history(HistoryView view);
  }

  @GET
  @Transactional
  @Needs(Action.LOOK_BACK)
  public TemplateInstance newest(@Context UriInfo uri) {
    return page(new Topic(say("In the whole cluster"), ALL, "", List.of()), uri);
  }

  /** Of whatever has this id. */
  @GET
  @Transactional
  @Path("/{id}")
  @Needs(Action.LOOK_BACK)
  public TemplateInstance ofOne(@RestPath String id, @Context UriInfo uri) {
    UUID one = Asked.id("change", id);
    return page(
        new Topic(say("Of one thing"), "/history/" + one, one.toString(), List.of(all())), uri);
  }

  @GET
  @Transactional
  @Path("/vestments/{code}")
  @Needs(Action.LOOK_BACK)
  public TemplateInstance ofPiece(@RestPath String code, @Context UriInfo uri) {
    return page(
        topic(
            say("%s, care included", code),
            "/vestments/" + code,
            pool.id(code),
            new Link(say("The piece"), "/vestments/" + code)),
        uri);
  }

  @GET
  @Transactional
  @Path("/masses/{id}")
  @Needs(Action.LOOK_BACK)
  public TemplateInstance ofMass(@RestPath String id, @Context UriInfo uri) {
    DatedMass mass = masses.get(id);
    String name =
        "%s, %s, %s"
            .formatted(
                mass.church().name(), Speech.dateAndYear(mass.date()), Speech.clock(mass.start()));
    return page(
        topic(name, "/masses/" + id, mass.id().value(), new Link(say("The Mass"), "/masses/" + id)),
        uri);
  }

  /** Of the person, and of what the person is named in. */
  @GET
  @Path("/people/{slug}")
  @Needs(Action.LOOK_BACK)
  @Transactional
  public TemplateInstance ofPerson(@RestPath String slug, @Context UriInfo uri) {
    Person person = people.get(slug);
    return page(
        topic(
            say("%s, and Masses and journeys with that name", person.calledName()),
            "/people/" + slug,
            person.id(),
            new Link(say("The person"), "/people/" + slug)),
        uri);
  }

  /** Of the church, its Masses and its pieces. */
  @GET
  @Path("/churches/{slug}")
  @Needs(Action.LOOK_BACK)
  @Transactional
  public TemplateInstance ofChurch(@RestPath String slug, @Context UriInfo uri) {
    Church church = cluster.getChurch(slug);
    return page(
        topic(
            say("%s, its Masses and its pieces", church.name()),
            "/churches/" + slug,
            church.id().value(),
            new Link(say("The church"), "/churches/" + slug)),
        uri);
  }

  /** What a user changed, not what was changed about the user. */
  @GET
  @Transactional
  @Path("/users/{id}")
  @Needs(Action.LOOK_BACK)
  public TemplateInstance byUser(@RestPath String id, @Context UriInfo uri) {
    UUID user = Asked.id("user", id);
    String name =
        Optional.ofNullable(users.all().get(user))
            .orElseThrow(() -> new Refused(new Refusal.NotThere("user", id)));
    Topic topic = new Topic(say("What %s changed", name), ALL, "", List.of(all()));
    return Templates.history(
        sheet.view(topic, Entries.of(uri.getQueryParameters()).with("who", user.toString())));
  }

  private static Link all() {
    return new Link(say("All changes"), ALL);
  }

  private static Topic topic(String title, String of, UUID concern, Link to) {
    return new Topic(title, "/history" + of, concern.toString(), List.of(to, all()));
  }

  private TemplateInstance page(Topic topic, UriInfo uri) {
    return Templates.history(sheet.view(topic, Entries.of(uri.getQueryParameters())));
  }
}
