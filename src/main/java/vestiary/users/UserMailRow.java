package vestiary.users;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** How a user is written to. */
@Entity
@Table(name = "user_mail")
class UserMailRow {

  /** That of the user. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  /** Proven; empty while none is. */
  String address = "";

  /** Waits to be proven; empty if none does. */
  String wanted = "";

  String fingerprint = "";
  Instant endsAt;

  // Absent in a new row: with an id of its own, Hibernate tells new from old by it.
  @Version Integer version;
}
