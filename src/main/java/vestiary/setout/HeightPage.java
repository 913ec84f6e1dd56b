package vestiary.setout;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.people.KeepHeight;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** How tall somebody is, asked on the sheet of a Mass where it matters. */
@Path("/masses/{id}/height")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SET_OUT)
class HeightPage {

  private final ReadSetOut read;
  private final KeepHeight heights;
  private final CurrentVisitor visitor;

  HeightPage(ReadSetOut read, KeepHeight heights, CurrentVisitor visitor) {
    this.read = read;
    this.heights = heights;
    this.visitor = visitor;
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response keep(@RestPath String id, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    DatedMass mass = read.standing(id);
    visitor.refuseOutsideOwn(Action.SET_OUT, mass.church().id().value());
    Asked asked = new Asked();
    String person = asked.needed("person", typed.text("person"), 200);
    Integer height = asked.number("height", asked.needed("height", typed.text("height"), 10));
    asked.refuseIfFaulty();
    heights.keep(person, height);
    return PageAnswer.seeOther("/masses/%s/set-out".formatted(mass.id().value()));
  }
}
