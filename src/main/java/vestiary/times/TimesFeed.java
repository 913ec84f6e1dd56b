package vestiary.times;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import vestiary.access.OpenToAll;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.feed.CalendarEvent;
import vestiary.feed.FeedAnswer;
import vestiary.feed.MassCalendar;

/** Published Mass times for the calendars of parishioners. */
@Path("/feeds")
class TimesFeed {

  private static final String TYPE = "text/calendar;charset=UTF-8";

  private final PublishTimes publish;
  private final ReadCluster cluster;

  TimesFeed(PublishTimes publish, ReadCluster cluster) {
    this.publish = publish;
    this.cluster = cluster;
  }

  @GET
  @Transactional
  @OpenToAll
  @Path("/times.ics")
  @Produces(TYPE)
  @Operation(summary = "Published Mass times as a calendar (iCalendar, RFC 5545), without sign-in")
  public Response times(
      @QueryParam("church") @DefaultValue("") String church,
      @QueryParam("lang") @DefaultValue("") String language,
      @QueryParam("cluster") @DefaultValue("") String place,
      @Context Request request) {
    Cluster here = cluster.cluster();
    String name = church.isEmpty() ? here.name() : cluster.getChurch(church).name();
    TimesWords words =
        new TimesWords(TimesSheet.tongue(new TimesAsked(church, language, place, ""), here));
    Optional<Published> found = publish.find();
    List<CalendarEvent> events =
        found.stream()
            .flatMap(one -> one.times().masses().stream().map(m -> event(m, one, here, words)))
            .filter(event -> church.isEmpty() || event.place().startsWith(name))
            .toList();
    return FeedAnswer.of(request, MassCalendar.of(name, here.zone(), events), TYPE);
  }

  /** Each press is a new version of all of them. */
  private static CalendarEvent event(
      PublicTimes.Mass mass, Published published, Cluster here, TimesWords words) {
    ZonedDateTime start = mass.date().atTime(mass.time()).atZone(here.zone());
    String place = mass.church().place();
    return new CalendarEvent(
        "%s-public@%s".formatted(mass.id(), here.id()),
        published.turn(),
        published.at().toInstant(),
        start,
        start.plusMinutes(mass.minutes()),
        words.what(mass),
        place.isEmpty() ? mass.church().name() : mass.church().name() + ", " + place,
        words.difference(mass),
        false,
        false);
  }
}
