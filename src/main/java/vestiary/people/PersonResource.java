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
  private final KeepHeight height;

  PersonResource(FindPeople people, KeepMail mail, KeepHeight height) {
    this.height = height;
    this.people = people;
    this.mail = mail;
  }

  /** Where a person is written to. */
  record MailBody(String address) {}

  /**
   * How tall a person is.
   *
   * @param height in centimetres; absent if nobody has said
   */
  record HeightBody(Integer height) {}

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

  @GET
  @Transactional
  @Path("/{slug}/height")
  @Needs(Action.SET_OUT)
  public HeightBody height(@RestPath String slug) {
    return new HeightBody(height.find(slug).orElse(null));
  }

  /** Keeps how tall a person is; without a height it is forgotten. */
  @PUT
  @Path("/{slug}/height")
  @Consumes(MediaType.APPLICATION_JSON)
  @Needs(Action.SET_OUT)
  public void keepHeight(@RestPath String slug, HeightBody body) {
    height.keep(slug, Asked.body(body).height());
  }

  @DELETE
  @Path("/{slug}/height")
  @Needs(Action.SET_OUT)
  public void forgetHeight(@RestPath String slug) {
    height.keep(slug, null);
  }
}
