package vestiary.ordo;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import vestiary.access.OpenByKey;
import vestiary.cluster.ReadCluster;
import vestiary.web.Speech;

/**
 * The liturgical calendar for programs that ask for it again and again: the present liturgical year
 * and the next. They can send nothing but an address, so a key in it opens it.
 */
@Path("/feeds")
class YearFeed {

  private final ReadOrdo ordo;
  private final ReadCluster cluster;
  private final Clock clock;

  YearFeed(ReadOrdo ordo, ReadCluster cluster, Clock clock) {
    this.ordo = ordo;
    this.cluster = cluster;
    this.clock = clock;
  }

  @GET
  @Transactional
  @OpenByKey
  @Path("/ordo.ics")
  @Produces("text/calendar;charset=UTF-8")
  @Operation(
      summary = "The present and the next liturgical year as one calendar (iCalendar, RFC 5545)",
      description =
          "Opened by the key of a feed, made under one's own name, or as anything that reads.")
  public String calendar(
      @Parameter(description = "Short name of the one church whose days are wanted")
          @QueryParam("church")
          String church,
      @Parameter(description = "The key of a feed") @QueryParam("key") String key) {
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    LiturgicalYear present = LiturgicalYear.of(today);
    List<Ordo> years =
        Stream.of(Optional.of(present), present.findAfter())
            .flatMap(Optional::stream)
            .map(year -> ordo.read(year, church))
            .toList();
    return Speech.forTheRecord(() -> OrdoCalendar.feed(years));
  }
}
