package vestiary.pool;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** That a piece was worn although nobody planned it, or lay ready and was not. */
@Entity
@Table(name = "worn")
class WornRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  UUID pieceId;
  boolean worn;

  /** The one that was planned and not worn; {@code null} if there was none. */
  UUID insteadOf;

  /** When the Mass began. */
  Instant wornAt;

  @Version int version;
}
