package vestiary.feed;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import vestiary.access.CurrentVisitor;
import vestiary.access.OpenByKey;
import vestiary.access.Visitor;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.ReadStamped;
import vestiary.telling.LanguageOfReader;
import vestiary.users.PersonOfUser;

/**
 * Masses for programs that keep calendars, from a fortnight ago to half a year ahead. They can send
 * nothing but an address, so a key in it opens it; whoever made the key ends it under their
 * account.
 */
@Path("/feeds")
class MassFeeds {

  private static final String TYPE = "text/calendar;charset=UTF-8";
  private static final int DAYS_BACK = 14;
  private static final int DAYS_AHEAD = 182;

  private final ReadStamped masses;
  private final ReadCluster cluster;
  private final CurrentVisitor current;
  private final PersonOfUser who;
  private final LanguageOfReader languages;
  private final Clock clock;

  MassFeeds(
      ReadStamped masses,
      ReadCluster cluster,
      CurrentVisitor current,
      PersonOfUser who,
      LanguageOfReader languages,
      Clock clock) {
    this.masses = masses;
    this.cluster = cluster;
    this.current = current;
    this.who = who;
    this.languages = languages;
    this.clock = clock;
  }

  @GET
  @Transactional
  @OpenByKey
  @Path("/mine.ics")
  @Produces(TYPE)
  @Operation(
      summary = "The Masses of whoever the key belongs to (iCalendar, RFC 5545)",
      description = "Cancelled ones stay in it, marked as cancelled, until their day is past.")
  public Response mine(
      @Parameter(description = "The key of a feed") @QueryParam("key") String key,
      @Context Request request) {
    UUID person = person();
    Cluster here = cluster.cluster();
    MassEvents events = new MassEvents(here, languages.of(person));
    return answer(
        request,
        here,
        here.name(),
        stamped(here).stream()
            .filter(one -> one.mass().people().stream().anyMatch(p -> p.id().equals(person)))
            .map(one -> events.ofPerson(one, person))
            .toList());
  }

  @GET
  @Transactional
  @OpenByKey
  @Path("/masses.ics")
  @Produces(TYPE)
  @Operation(
      summary = "The Masses of a church, or of all (iCalendar, RFC 5545)",
      description = "Cancelled ones stay in it, marked as cancelled, until their day is past.")
  public Response church(
      @Parameter(description = "Short name of a church; of all without") @QueryParam("church")
          String church,
      @Parameter(description = "The key of a feed") @QueryParam("key") String key,
      @Context Request request) {
    Cluster here = cluster.cluster();
    List<Church> only =
        church == null || church.isBlank() ? List.of() : List.of(cluster.getChurch(church));
    MassEvents events = new MassEvents(here, languages.ofCluster());
    return answer(
        request,
        here,
        only.stream().map(Church::name).findFirst().orElse(here.name()),
        stamped(here).stream()
            .filter(one -> only.stream().allMatch(c -> c.id().equals(one.mass().church().id())))
            .map(events::ofChurch)
            .toList());
  }

  private static Response answer(
      Request request, Cluster here, String name, List<CalendarEvent> events) {
    return FeedAnswer.of(request, MassCalendar.of(name, here.zone(), events), TYPE);
  }

  private List<ReadStamped.Stamped> stamped(Cluster here) {
    LocalDate today = LocalDate.now(clock.withZone(here.zone()));
    return masses.between(today.minusDays(DAYS_BACK), today.plusDays(DAYS_AHEAD));
  }

  private UUID person() {
    if (current.visitor() instanceof Visitor.User user) {
      return who.find(user.id())
          .orElseThrow(
              () ->
                  new Refused(
                      new Refusal.Beyond(
                          "Nobody of the schedule is named for whoever made this key, so there is nothing to show.")));
    }
    throw new Refused(
        new Refusal.Beyond(
            "This calendar is one person’s own; it is opened by a key that they made under their account."));
  }
}
