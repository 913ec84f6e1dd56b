package vestiary.access;

import jakarta.ws.rs.container.ContainerRequestContext;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Gives each request its cluster before anything is read. */
final class ClusterOfRequest {

  private final CurrentCluster current;
  private final DefaultCluster fallback;

  ClusterOfRequest(CurrentCluster current, DefaultCluster fallback) {
    this.current = current;
    this.fallback = fallback;
  }

  @ServerRequestFilter(preMatching = true)
  void assign(ContainerRequestContext request) {
    current.assign(fallback.id());
  }
}
