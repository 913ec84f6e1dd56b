package vestiary.telling;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.mail.KeptLetters;

/** Letters that wait, failed or left; what they say is told to nobody. */
@Path("/api/letters")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SETTLE_CLUSTER)
class LetterResource {

  private static final int SENT_TOLD = 100;

  private final KeptLetters letters;
  private final ReadCluster cluster;

  LetterResource(KeptLetters letters, ReadCluster cluster) {
    this.letters = letters;
    this.cluster = cluster;
  }

  /** What has not left, then the last hundred that have. */
  @GET
  @Transactional
  @Needs(Action.SETTLE_CLUSTER)
  public List<LetterBody> all() {
    ZoneId zone = cluster.cluster().zone();
    return Stream.concat(letters.unsent().stream(), letters.sent(SENT_TOLD).stream())
        .map(one -> LetterBody.of(one, zone))
        .toList();
  }

  @POST
  @Path("/{id}/try")
  public void tryNow(@RestPath String id) {
    letters.tryNow(id);
  }
}
