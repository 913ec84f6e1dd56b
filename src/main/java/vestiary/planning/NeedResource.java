package vestiary.planning;

import static vestiary.web.Speech.say;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.vesting.Need;
import vestiary.vesting.Step;

/** What everybody at one Mass must have, piece by piece, by the norms of vesture. */
@Path("/api/masses/{id}/needs")
@Produces(MediaType.APPLICATION_JSON)
class NeedResource {

  private final NeedsOfMass needs;

  NeedResource(NeedsOfMass needs) {
    this.needs = needs;
  }

  /**
   * One need as the API writes it.
   *
   * @param person counted from 1 within the role
   * @param from set-out, included
   * @param to clearance, excluded
   * @param must whether it must be mended when neither the piece nor a substitute can be had
   * @param ladder lawful substitutes, the nearest first
   * @param source the norm that asks for the piece
   * @param preferred what would suit best; never decides who is short
   */
  record NeedBody(
      String role,
      int person,
      String kind,
      String colour,
      String from,
      String to,
      boolean must,
      List<StepBody> ladder,
      String source,
      PreferredBody preferred) {

    static NeedBody from(Need need, ZoneId zone) {
      return new NeedBody(
          need.role().id(),
          need.ordinal(),
          need.kind().id(),
          need.colour().id(),
          local(need.window().setOut(), zone),
          local(need.window().cleared(), zone),
          need.isMust(),
          need.ladder().stream().map(StepBody::from).toList(),
          need.source(),
          new PreferredBody(
              need.preferred().shade(), need.preferred().grade(), need.preferred().size()));
    }

    private static String local(Instant moment, ZoneId zone) {
      return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }
  }

  record StepBody(String step, String sentence, String source) {

    static StepBody from(Step step) {
      return new StepBody(step.id(), say(step.sentence()), step.source());
    }
  }

  /** Shade, grade and size; empty where all is the same. */
  record PreferredBody(String shade, String grade, String size) {}

  @GET
  @Transactional
  public List<NeedBody> all(@RestPath String id) {
    NeedsOfMass.Found found = needs.get(id);
    return found.needs().stream().map(n -> NeedBody.from(n, found.zone())).toList();
  }
}
