package vestiary.feed;

import static vestiary.web.Speech.say;

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
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import vestiary.access.CurrentVisitor;
import vestiary.access.OpenByKey;
import vestiary.access.Role;
import vestiary.access.Visitor;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.people.Attendance;
import vestiary.planning.AttendanceAtMasses;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.ReadStamped;
import vestiary.telling.LanguageOfReader;
import vestiary.telling.Tongue;
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
  private final AttendanceAtMasses attendance;
  private final OwnMasses own;
  private final OwnJourneys journeys;
  private final Clock clock;

  MassFeeds(
      ReadStamped masses,
      ReadCluster cluster,
      CurrentVisitor current,
      PersonOfUser who,
      LanguageOfReader languages,
      AttendanceAtMasses attendance,
      OwnMasses own,
      OwnJourneys journeys,
      Clock clock) {
    this.masses = masses;
    this.cluster = cluster;
    this.current = current;
    this.who = who;
    this.languages = languages;
    this.attendance = attendance;
    this.own = own;
    this.journeys = journeys;
    this.clock = clock;
  }

  @GET
  @Transactional
  @OpenByKey
  @Path("/mine.ics")
  @Produces(TYPE)
  @Operation(
      summary = "The Masses and journeys of whoever the key belongs to (iCalendar, RFC 5545)",
      description =
          "Cancelled Masses stay in it, marked as cancelled, until their day is past; those at which somebody is named who is away then say so and leave him free. A celebrant has the ways between two churches, a sacristan the journeys of the vestments of theirs.")
  public Response mine(
      @Parameter(description = "The key of a feed") @QueryParam("key") String key,
      @Context Request request) {
    Visitor.User user = user();
    Optional<UUID> person = who.find(user.id());
    if (person.isEmpty() && user.role() != Role.SACRISTAN) {
      throw new Refused(
          new Refusal.Beyond(
              say(
                  "Nobody of the schedule is named for whoever made this key, so there is nothing to show.")));
    }
    Cluster here = cluster.cluster();
    Tongue tongue = languages.of(person.orElse(user.id()));
    return answer(
        request,
        here,
        here.name(),
        OwnJourneys.together(
            Stream.concat(
                person.stream().flatMap(one -> own.of(one, stamped(here), tongue)),
                ofSacristan(user, here, tongue))));
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
    List<ReadStamped.Stamped> theirs =
        stamped(here).stream()
            .filter(one -> only.stream().allMatch(c -> c.id().equals(one.mass().church().id())))
            .toList();
    Attendance there = attendance.of(theirs.stream().map(ReadStamped.Stamped::mass).toList());
    MassEvents events = new MassEvents(here, languages.ofCluster());
    return answer(
        request,
        here,
        only.stream().map(Church::name).findFirst().orElse(here.name()),
        theirs.stream().map(one -> events.ofChurch(one, there)).toList());
  }

  private static Response answer(
      Request request, Cluster here, String name, List<CalendarEvent> events) {
    return FeedAnswer.of(request, MassCalendar.of(name, here.zone(), events), TYPE);
  }

  private List<ReadStamped.Stamped> stamped(Cluster here) {
    LocalDate today = LocalDate.now(clock.withZone(here.zone()));
    return masses.between(today.minusDays(DAYS_BACK), today.plusDays(DAYS_AHEAD));
  }

  private Stream<CalendarEvent> ofSacristan(Visitor.User user, Cluster here, Tongue tongue) {
    LocalDate today = LocalDate.now(clock.withZone(here.zone()));
    return user.role() == Role.SACRISTAN
        ? journeys
            .rides(user.churches(), today.minusDays(DAYS_BACK), today.plusDays(DAYS_AHEAD), tongue)
            .stream()
        : Stream.empty();
  }

  private Visitor.User user() {
    if (current.visitor() instanceof Visitor.User user) {
      return user;
    }
    throw new Refused(
        new Refusal.Beyond(
            say(
                "This calendar is one person’s own; it is opened by a key that they made under their account.")));
  }
}
