package vestiary.plan;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.vesting.ChurchId;

/** What is carried where, by the plans that hold. */
@Path("/api/movements")
@Produces(MediaType.APPLICATION_JSON)
class MovementResource {

  private static final int LONGEST_SPAN_DAYS = 100;

  private final ReadMovements movements;

  MovementResource(ReadMovements movements) {
    this.movements = movements;
  }

  @GET
  public List<MovementBody> between(@QueryParam("from") String from, @QueryParam("to") String to) {
    Asked asked = new Asked();
    Asked.Span dates = asked.span(from, to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    ReadMovements.Journeys found = movements.between(dates.first(), dates.last());
    return found.trips().stream().map(trip -> body(trip, found)).toList();
  }

  private static MovementBody body(PlanResult.Trip trip, ReadMovements.Journeys found) {
    return new MovementBody(
        trip.pieces(),
        slug(trip.from(), found),
        slug(trip.to(), found),
        trip.ready().stream().map(moment -> local(moment, found)).findFirst().orElse(null),
        local(trip.leaveBy(), found),
        local(trip.arriveBy(), found),
        trip.carrier().isEmpty() ? null : trip.carrier(),
        trip.carrier().isEmpty(),
        trip.onAsking());
  }

  private static String slug(UUID church, ReadMovements.Journeys found) {
    return found.churches().get(new ChurchId(church)).slug();
  }

  private static String local(Instant moment, ReadMovements.Journeys found) {
    return moment.atZone(found.cluster().zone()).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
