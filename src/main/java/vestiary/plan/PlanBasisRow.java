package vestiary.plan;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** What a plan was made from, apart from it: most who look at a plan do without. */
@Entity
@Table(name = "plan_basis")
class PlanBasisRow {

  /** That of the plan. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String facts;
}
