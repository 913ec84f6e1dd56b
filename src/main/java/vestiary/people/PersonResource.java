package vestiary.people;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** Names of those who appear in schedules. */
@Path("/api/people")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PLAN)
class PersonResource {

  private final FindPeople people;
  private final KeepMail mail;

  PersonResource(FindPeople people, KeepMail mail) {
    this.people = people;
    this.mail = mail;
  }

  /** Where a person is written to. */
  record MailBody(String address) {}

  /** A person as the API writes him. */
  record PersonBody(String slug, String name, String title, String role, boolean visiting) {
    static PersonBody from(Person p) {
      return new PersonBody(p.slug(), p.name(), p.title(), p.role().id(), p.isVisiting());
    }
  }

  @GET
  @Transactional
  public List<PersonBody> all() {
    return people.all().stream().map(PersonBody::from).toList();
  }

  /** Keeps where a person is written to; it is never answered. */
  @PUT
  @Path("/{slug}/mail")
  @Consumes(MediaType.APPLICATION_JSON)
  public void keepMail(@RestPath String slug, MailBody body) {
    mail.keep(slug, Asked.body(body).address());
  }

  @DELETE
  @Path("/{slug}/mail")
  public void forgetMail(@RestPath String slug) {
    mail.forget(slug);
  }
}
