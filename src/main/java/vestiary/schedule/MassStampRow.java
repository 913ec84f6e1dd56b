package vestiary.schedule;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** How often a Mass was changed; the database writes it. */
@Entity
@Table(name = "mass_stamp")
class MassStampRow {

  /** That of the Mass. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  int sequence;
  Instant changedAt;
}
