package vestiary.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** How tall a person is. */
@Entity
@Table(name = "person_height")
class PersonHeightRow {

  /** That of the person. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  int centimetres;
  @Version Integer version;
}
