package vestiary.erasure;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** That somebody was removed for good; to enter it is to have the database do it. */
@Entity
@Table(name = "erasure")
class ErasureRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  Instant at;
  UUID subject;
  String visitor;
  String[] names;
  String[] surnames;
}
