package vestiary.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** What few may read of a person under 18. */
@Entity
@Table(name = "child")
class ChildRow {

  /** That of the person. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String wholeName;

  /** Names of parents or guardians. */
  String responsible;

  @Version Integer version;
}
