package vestiary.reservation;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;

/** What is set aside goes out and comes back. */
@Path("/api/reservations/{id}")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Needs(Action.SEND)
@Transactional
class ReservedSendingResource {

  private final SendReserved send;
  private final ReadReservations read;

  ReservedSendingResource(SendReserved send, ReadReservations read) {
    this.send = send;
    this.read = read;
  }

  @POST
  @Path("/out")
  @Operation(summary = "Sends what is set aside out to its Mass; without a body as is usual.")
  public ReservationBody out(@RestPath String id, OutBody body) {
    send.out(id, Optional.ofNullable(body).orElse(OutBody.USUAL));
    return ReservationBody.from(read.get(id));
  }

  @POST
  @Path("/back")
  @Operation(summary = "Takes in what of it is out; without a body at home, as it went.")
  public ReservationBody back(@RestPath String id, OutBody.Back body) {
    send.back(id, Optional.ofNullable(body).orElse(OutBody.Back.USUAL));
    return ReservationBody.from(read.get(id));
  }
}
