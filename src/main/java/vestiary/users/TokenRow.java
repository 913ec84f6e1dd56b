package vestiary.users;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

@Entity
@Table(name = "user_token")
class TokenRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID userId;
  String name;
  boolean looksOnly;

  /** The key of a feed, which opens feeds and nothing else. */
  boolean feed;

  String fingerprint;
  Instant madeAt;
  Instant endsAt;
  Instant usedAt;
}
