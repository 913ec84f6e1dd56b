package vestiary.setout;

import static vestiary.web.Speech.say;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.pool.Worn;
import vestiary.problem.Asked;

/** What was worn at a Mass. */
@Path("/api/masses/{id}/worn")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SET_OUT)
class WornResource {

  private final PutRight worn;

  WornResource(PutRight worn) {
    this.worn = worn;
  }

  /**
   * Whether a piece was worn.
   *
   * @param insteadOf the piece that lay ready and was not worn; absent if there was none
   */
  record WornBody(String piece, Boolean worn, String insteadOf) {}

  /** What is put right; without pieces, everything was worn as planned. */
  record PutRightBody(List<WornBody> pieces) {}

  /** Everything that lay ready or was worn. */
  @GET
  @Transactional
  public List<WornBody> all(@RestPath String id) {
    WornOfMass found = worn.read(id);
    return Stream.of(
            found.lines().stream().map(line -> new WornBody(line.piece(), line.worn(), null)),
            found.lines().stream()
                .filter(line -> !line.instead().isEmpty())
                .map(line -> new WornBody(line.instead(), true, line.piece())),
            found.besides().stream().map(one -> new WornBody(one.piece(), true, null)))
        .flatMap(bodies -> bodies)
        .toList();
  }

  /** Puts this in the place of all that was said; what is not named was worn as planned. */
  @PUT
  @Consumes(MediaType.APPLICATION_JSON)
  public List<WornBody> keep(@RestPath String id, PutRightBody body) {
    Asked asked = new Asked();
    List<WornBody> given = Asked.body(body).pieces();
    List<WornBody> said = given == null ? List.of() : given;
    if (said.stream().anyMatch(Objects::isNull)) {
      asked.fault("piece", say("The list has an entry that says nothing."));
    }
    asked.refuseIfFaulty();
    worn.keep(
        id,
        said.stream()
            .map(
                one ->
                    new Worn(
                        asked.text("piece", one.piece()),
                        !Boolean.FALSE.equals(one.worn()),
                        asked.text("insteadOf", one.insteadOf())))
            .toList());
    return all(id);
  }
}
