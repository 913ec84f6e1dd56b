package vestiary.telling;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** That something was changed which sacristans may have been told of; the database writes it. */
@Entity
@Table(name = "sacristy_change")
class SacristyChangeRow implements Change {

  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  Instant at;

  @Override
  public UUID id() {
    return id;
  }

  @Override
  public Instant at() {
    return at;
  }
}
