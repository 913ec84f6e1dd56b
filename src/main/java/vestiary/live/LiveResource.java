package vestiary.live;

import io.smallrye.common.annotation.Blocking;
import io.smallrye.mutiny.Multi;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import java.time.Duration;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import vestiary.access.CurrentCluster;
import vestiary.problem.Asked;

/** Server-sent events (HTML Living Standard, section 9.2) for open pages. */
@Path("/live")
class LiveResource {

  /** So often a line is sent in any case, lest something on the way think nobody is there. */
  private static final Duration SIGN_OF_LIFE = Duration.ofSeconds(20);

  private static final int A_DAY_IN_MILLIS = 86_400_000;

  private final ChangeBell bell;
  private final Listeners listeners;
  private final CurrentCluster cluster;

  LiveResource(ChangeBell bell, Listeners listeners, CurrentCluster cluster) {
    this.bell = bell;
    this.listeners = listeners;
    this.cluster = cluster;
  }

  /**
   * Changes since the page was asked for. Blocking until the stream is there, since whose request
   * it is is read from the database.
   *
   * @param age how many milliseconds ago the page was asked for, at most a day; none and nothing
   *     past is told
   */
  @GET
  @Blocking
  @Produces(MediaType.SERVER_SENT_EVENTS)
  @Operation(
      summary =
          "An event named change whenever something was changed in the cluster; its data says over how"
              + " many milliseconds those who listen do well to look again.")
  public Multi<OutboundSseEvent> changes(@QueryParam("age") String age, @Context Sse sse) {
    Asked asked = new Asked();
    int millis = asked.whole("age", asked.number("age", age), 0, A_DAY_IN_MILLIS, 0);
    asked.refuseIfFaulty();
    UUID here = cluster.id();
    Multi<OutboundSseEvent> changes =
        bell.changesIn(here, Duration.ofMillis(millis)).map(change -> event(here, sse));
    Multi<OutboundSseEvent> signs =
        Multi.createFrom()
            .ticks()
            .every(SIGN_OF_LIFE)
            .onOverflow()
            .drop()
            .map(tick -> sse.newEventBuilder().comment("here").build());
    return listeners.counted(here, Multi.createBy().merging().streams(changes, signs));
  }

  private OutboundSseEvent event(UUID here, Sse sse) {
    return sse.newEventBuilder()
        .name("change")
        .data(String.valueOf(listeners.spreadMillis(here)))
        .build();
  }
}
