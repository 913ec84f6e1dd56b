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

/** A stretch of time in which a piece is taken; the database refuses two that overlap. */
@Entity
@Table(name = "occupation")
class OccupationRow {

  static final String CARE = "care";

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID pieceId;
  String state;
  Instant starts;

  /** {@code null}: until further notice. */
  Instant ends;

  UUID churchId;
  UUID massId;
  String reason = "";
  boolean standing = true;
  @Version int version;
}
