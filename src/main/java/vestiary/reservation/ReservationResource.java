package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** Sets and pieces that are set aside for Masses. */
@Path("/api/reservations")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SET_ASIDE)
class ReservationResource {

  private static final int LONGEST_SPAN_DAYS = 400;
  private static final int LONGEST_CODE = 200;

  private final ReadReservations read;
  private final ReserveSets reserve;
  private final ReleaseReservation release;
  private final TellWaiting waiting;

  ReservationResource(
      ReadReservations read, ReserveSets reserve, ReleaseReservation release, TellWaiting waiting) {
    this.read = read;
    this.reserve = reserve;
    this.release = release;
    this.waiting = waiting;
  }

  @GET
  @Transactional
  @Operation(summary = "What is held or out, on some of these dates or for one Mass.")
  public List<ReservationBody> all(
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      @QueryParam("mass") String mass) {
    return found(from, to, mass).stream().map(ReservationBody::from).toList();
  }

  @GET
  @Transactional
  @Path("/{id}")
  public ReservationBody one(@RestPath String id) {
    return ReservationBody.from(read.get(id));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Sets a set or a piece aside for a Mass; 409 tells who has it and what is free.")
  public Response reserve(ReservationBody body) {
    ReserveSets.Done done = reserve.reserve(request(Asked.body(body)));
    String id = done.ids().get(0).toString();
    return Response.created(URI.create("/api/reservations/" + id)).entity(one(id)).build();
  }

  @DELETE
  @Path("/{id}")
  @Operation(summary = "Gives up what is set aside and not out yet.")
  public void release(@RestPath String id) {
    release.release(id);
    waiting.look();
  }

  private List<Reservation> found(String from, String to, String mass) {
    boolean dated = isGiven(from) || isGiven(to);
    if (isGiven(mass) && !dated) {
      return read.forMass(mass);
    }
    Asked asked = new Asked();
    Asked.Span span = asked.span(from, to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    return read.between(span.first(), span.last()).stream()
        .filter(one -> !isGiven(mass) || one.mass().id().value().toString().equals(mass))
        .toList();
  }

  private static boolean isGiven(String text) {
    return text != null && !text.isBlank();
  }

  private static ReserveSets.Request request(ReservationBody body) {
    Asked asked = new Asked();
    String set = asked.text("set", body.set(), LONGEST_CODE);
    String piece = asked.text("piece", body.piece(), LONGEST_CODE);
    String mass = asked.needed("mass", body.mass(), LONGEST_CODE);
    if (!asked.isFaulty() && set.isEmpty() == piece.isEmpty()) {
      asked.fault("set", say("Give either a set or a piece, by its code."));
    }
    asked.refuseIfFaulty();
    return new ReserveSets.Request(new ReserveSets.Scheduled(mass), given(set), given(piece));
  }

  private static List<String> given(String code) {
    return Stream.of(code).filter(one -> !one.isEmpty()).toList();
  }
}
