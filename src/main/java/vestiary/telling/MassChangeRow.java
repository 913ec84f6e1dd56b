package vestiary.telling;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.type.SqlTypes;

/** What a Mass was before it was changed; the database writes it. */
@Entity
@Table(name = "mass_change")
class MassChangeRow implements Change {

  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  Instant at;

  @JdbcTypeCode(SqlTypes.JSON)
  MassBefore before;

  @Override
  public UUID id() {
    return id;
  }

  @Override
  public Instant at() {
    return at;
  }
}
