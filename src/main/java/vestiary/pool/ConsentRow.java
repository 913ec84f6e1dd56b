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

/** An owner's answer for one piece and one Mass. */
@Entity
@Table(name = "consent")
class ConsentRow {

  static final String GRANTED = "granted";
  static final String REFUSED = "refused";

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  UUID pieceId;
  String state;
  String answeredBy;
  Instant answeredAt;
  @Version int version;
}
