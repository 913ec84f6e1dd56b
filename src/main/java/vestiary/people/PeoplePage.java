package vestiary.people;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.web.English;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Who appears in schedules, and one of them. */
@Path("/people")
@Produces(MediaType.TEXT_HTML)
class PeoplePage {

  private final FindPeople people;
  private final Frames frames;

  PeoplePage(FindPeople people, Frames frames) {
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
    return Templates.people(
        new PeopleView(
            frames.of("settings", "/people"),
            done.equals("removed") ? "Removed for good." : "",
            people.all().stream()
                .map(p -> new PeopleView.Row(new Link(p.calledName(), address(p)), about(p)))
                .toList()));
  }

  @GET
  @Path("/{slug}")
  @Transactional
  public TemplateInstance one(@RestPath String slug) {
    Person person = people.get(slug);
    return Templates.person(
        new PersonView(
            frames.of("settings", address(person)),
            person.calledName(),
            person.tightName(),
            English.sentence(about(person)),
            "/history" + address(person),
            address(person) + "/erasure"));
  }

  private static String address(Person person) {
    return "/people/" + person.slug();
  }

  private static String about(Person person) {
    return person.isVisiting() ? person.role().id() + ", from outside" : person.role().id();
  }
}
