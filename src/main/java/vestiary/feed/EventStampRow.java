package vestiary.feed;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** How often an event that is kept nowhere was seen changed. */
@Entity
@Table(name = "event_stamp")
class EventStampRow {

  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  int sequence;
  Instant changedAt;
  Instant endsAt;
  String digest;
}
