package vestiary.setout;

import static vestiary.web.Speech.say;

import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.cluster.ReadCluster;
import vestiary.web.Frames;
import vestiary.web.Link;

/** The set-out sheet of one Mass. */
@Path("/masses/{id}/set-out")
@Produces(MediaType.TEXT_HTML)
class SetOutOfMassPage {

  private final ReadSetOut read;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  SetOutOfMassPage(ReadSetOut read, ReadCluster cluster, Frames frames, Clock clock) {
    this.read = read;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  @GET
  @Transactional
  public TemplateInstance one(@RestPath String id, @QueryParam("paper") String paper) {
    SheetPaper chosen = SetOutPage.paper(paper);
    SetOut found = read.get(id);
    String mass = "/masses/" + found.mass().id().value();
    String day = found.mass().date().toString();
    return SetOutPage.Templates.sheets(
        new SetOutView(
            frames.of("day", mass + "/set-out"),
            say("Set-out sheet"),
            SetOutSheets.over(found.mass()),
            "",
            List.of(
                new Link(say("The Mass"), mass),
                new Link(
                    say("All sheets of the day"), "/set-out?from=%s&to=%s".formatted(day, day)),
                new Link(say("The day"), "/day/" + day)),
            SetOutPage.papers(mass + "/set-out?", chosen),
            List.of(),
            chosen.id(),
            List.of(new SetOutSheets(cluster.cluster(), clock.instant()).sheet(found)),
            ""));
  }
}
