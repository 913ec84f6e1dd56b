package vestiary.assigning;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;
import vestiary.schedule.CelebrantState;

/** Celebrants that were named at one press. */
@Entity
@Table(name = "assignment")
class AssignmentRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  Instant assignedAt;

  /** {@code null} while it holds. */
  Instant undoneAt;

  @JdbcTypeCode(SqlTypes.JSON)
  List<Move> moves;

  @Version int version;

  /** One Mass as it was, and who is named since. */
  record Move(CelebrantState before, UUID named) {}
}
