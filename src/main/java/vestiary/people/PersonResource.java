package vestiary.people;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** Those who appear in schedules, and what they serve. */
@Path("/api/people")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PLAN)
class PersonResource {

  private final PersonBodies bodies;
  private final EnterPerson enter;
  private final KeepMail mail;
  private final KeepHeight height;

  PersonResource(PersonBodies bodies, EnterPerson enter, KeepMail mail, KeepHeight height) {
    this.height = height;
    this.bodies = bodies;
    this.enter = enter;
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

  @GET
  @Transactional
  public List<PersonBody> all() {
    return bodies.all();
  }

  @GET
  @Transactional
  @Path("/{slug}")
  public PersonBody one(@RestPath String slug) {
    return bodies.one(slug);
  }

  /** Enters somebody, even where another has the same name. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  @Needs(Action.KEEP_PEOPLE)
  public Response add(PersonBody body) {
    PersonBody sent = Asked.body(body);
    Person entered = enter.enter(sent.toRequest(), sent.toMinistry());
    return Response.created(URI.create("/api/people/" + entered.slug()))
        .entity(bodies.one(entered.slug()))
        .build();
  }

  /** Changes somebody; the short name is answered anew if it told too much of a child. */
  @PUT
  @Path("/{slug}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  @Needs(Action.KEEP_PEOPLE)
  public PersonBody change(@RestPath String slug, PersonBody body) {
    PersonBody sent = Asked.body(body);
    return bodies.one(enter.change(slug, sent.toRequest(), sent.toMinistry()).slug());
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
