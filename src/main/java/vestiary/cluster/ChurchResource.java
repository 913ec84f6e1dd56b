package vestiary.cluster;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.problem.Asked;
import vestiary.web.Speech;

/** Churches and the days that each of them keeps. */
@Path("/api/churches")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SETTLE_CLUSTER)
class ChurchResource {

  private final ReadCluster cluster;
  private final SaveChurch save;
  private final ChurchCalendars calendars;

  ChurchResource(ReadCluster cluster, SaveChurch save, ChurchCalendars calendars) {
    this.cluster = cluster;
    this.save = save;
    this.calendars = calendars;
  }

  @GET
  @Transactional
  public List<ChurchBody> all() {
    return cluster.churches().stream().map(ChurchBody::from).toList();
  }

  @GET
  @Transactional
  @Path("/{slug}")
  public ChurchBody one(@RestPath String slug) {
    return ChurchBody.from(cluster.getChurch(slug));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(ChurchBody body) {
    String slug = save.enter(Asked.body(body).toRequest());
    return Response.created(URI.create("/api/churches/" + slug))
        .entity(ChurchBody.from(cluster.getChurch(slug)))
        .build();
  }

  @PUT
  @Path("/{slug}")
  @Consumes(MediaType.APPLICATION_JSON)
  public ChurchBody change(@RestPath String slug, ChurchBody body) {
    return ChurchBody.from(cluster.getChurch(save.change(slug, Asked.body(body).toRequest())));
  }

  @GET
  @Transactional
  @Path("/{slug}/days")
  public List<DayBody> days(
      @RestPath String slug,
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      @QueryParam("language") String language) {
    LiturgicalCalendar calendar = calendars.of(cluster.cluster(), cluster.getChurch(slug));
    Asked.Span span = CalendarResource.span(from, to);
    Locale locale = CalendarResource.locale(language);
    return Speech.in(locale, () -> DayBody.list(calendar, span, locale));
  }
}
