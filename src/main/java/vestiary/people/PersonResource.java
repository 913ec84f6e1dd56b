package vestiary.people;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** Names of those who appear in schedules. */
@Path("/api/people")
@Produces(MediaType.APPLICATION_JSON)
class PersonResource {

  private final FindPeople people;

  PersonResource(FindPeople people) {
    this.people = people;
  }

  /** A person as the API writes him. */
  record PersonBody(String slug, String name, String title, String role, boolean visiting) {
    static PersonBody from(Person p) {
      return new PersonBody(p.slug(), p.name(), p.title(), p.role().id(), p.isVisiting());
    }
  }

  @GET
  public List<PersonBody> all() {
    return people.all().stream().map(PersonBody::from).toList();
  }
}
