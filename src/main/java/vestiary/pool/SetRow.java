package vestiary.pool;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

@Entity
@Table(name = "vestment_set")
class SetRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String code;
  String name = "";
  UUID suitId;

  /** By which it is borrowed of another cluster, which the database notes; else {@code null}. */
  @Column(insertable = false, updatable = false)
  UUID lendingId;

  @Version int version;
}
