package vestiary.access;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import io.quarkus.hibernate.orm.runtime.tenant.TenantResolver;
import jakarta.enterprise.context.RequestScoped;

/** Tells Hibernate the cluster of each session; every query of a tenanted row is scoped by it. */
@PersistenceUnitExtension
@RequestScoped
class ClusterOfSession implements TenantResolver {

  /** Owns no row, since ids of clusters are never all zeros. */
  private static final String NOBODY = "00000000-0000-0000-0000-000000000000";

  private final CurrentCluster cluster;

  ClusterOfSession(CurrentCluster cluster) {
    this.cluster = cluster;
  }

  @Override
  public String getDefaultTenantId() {
    return NOBODY;
  }

  @Override
  public String resolveTenantId() {
    return cluster.id().toString();
  }
}
