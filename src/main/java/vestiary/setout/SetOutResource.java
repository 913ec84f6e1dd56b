package vestiary.setout;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.cluster.ReadCluster;

/** What lies on the vesting table for one Mass. */
@Path("/api/masses/{id}/set-out")
@Produces(MediaType.APPLICATION_JSON)
class SetOutResource {

  private final ReadSetOut read;
  private final ReadCluster cluster;

  SetOutResource(ReadSetOut read, ReadCluster cluster) {
    this.read = read;
    this.cluster = cluster;
  }

  @GET
  @Transactional
  public SetOutBody one(@RestPath String id) {
    return SetOutBody.of(read.get(id), cluster.cluster().zone());
  }
}
