package vestiary.pool;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** One piece's carriage between two churches. */
@Entity
@Table(name = "movement")
class MovementRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID pieceId;

  /** The same for pieces that ride together. */
  UUID tripId;

  UUID fromId;
  UUID toId;

  /** {@code null}: it lies there from the start. */
  Instant ready;

  Instant leaveBy;
  Instant arriveBy;
  String carrier = "";
  boolean onAsking;

  /** Whether somebody said that it was made. */
  boolean done;
}
