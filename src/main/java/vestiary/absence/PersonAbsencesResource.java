package vestiary.absence;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.ZoneId;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.people.Absence;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.ReadAbsences;
import vestiary.people.SaveAbsence;
import vestiary.problem.Asked;

/** When one person is not available. */
@Path("/api/people/{slug}/absences")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_PEOPLE)
class PersonAbsencesResource {

  private final ReadAbsences read;
  private final SaveAbsence save;
  private final WhatItTouches touches;
  private final FindPeople people;
  private final ReadCluster cluster;

  PersonAbsencesResource(
      ReadAbsences read,
      SaveAbsence save,
      WhatItTouches touches,
      FindPeople people,
      ReadCluster cluster) {
    this.read = read;
    this.save = save;
    this.touches = touches;
    this.people = people;
    this.cluster = cluster;
  }

  /** Enters it, and answers which Masses it touches. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  public Response enter(@RestPath String slug, AbsenceBody.Wanted body) {
    Person person = people.get(slug);
    AbsenceBody.Wanted wanted = Asked.body(body);
    Absence kept =
        save.enter(slug, new SaveAbsence.Request(wanted.from(), wanted.to(), wanted.reason()));
    ZoneId zone = cluster.cluster().zone();
    WhatItTouches.Touched touched = touches.by(kept);
    TouchedWords words = new TouchedWords(person, touched, zone);
    AbsenceBody.Entered entered =
        new AbsenceBody.Entered(
            AbsenceBody.from(kept, person, read.reasons(List.of(kept)).get(kept.id()), zone),
            touched.masses().stream().map(mass -> mass.id().value().toString()).toList(),
            (words.sentence() + " " + words.nobodyLeft()).strip());
    return Response.created(URI.create("/api/people/%s/absences/%s".formatted(slug, kept.id())))
        .entity(entered)
        .build();
  }

  /** The person is back: it ends now, or is struck out if it has not begun. */
  @POST
  @Path("/{id}/end")
  public void end(@RestPath String slug, @RestPath String id) {
    save.end(slug, id);
  }

  /** Strikes it out, as if it had never been said. */
  @DELETE
  @Path("/{id}")
  public void remove(@RestPath String slug, @RestPath String id) {
    save.remove(slug, id);
  }
}
