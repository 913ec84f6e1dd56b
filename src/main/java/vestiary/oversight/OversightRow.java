package vestiary.oversight;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;

/** Seen in two clusters, and so not kept apart by Hibernate: each query says on which side. */
@Entity
@Table(name = "oversight")
class OversightRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  /** The cluster that is looked into. */
  @Column(name = "cluster_id")
  UUID clusterId;

  /** The cluster in which the overseer signs in. */
  UUID homeId;

  UUID overseerId;
  Instant grantedAt;
}
