package vestiary.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** How a person is written to. */
@Entity
@Table(name = "person_mail")
class PersonMailRow {

  /** That of the person. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String address;
  Instant keptAt;
  @Version Integer version;
}
