package vestiary.users;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** As whom a user is known by another service. */
@Entity
@Table(name = "user_outside")
class OutsideRow {

  /** That of the user. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String issuer;
  String subject;
  Instant linkedAt;
}
