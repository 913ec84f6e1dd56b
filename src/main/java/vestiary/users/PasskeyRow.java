package vestiary.users;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** The public half of a key that a device holds. */
@Entity
@Table(name = "user_passkey")
class PasskeyRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID userId;
  String name;
  String credential;
  byte[] key;
  long counter;
  Instant addedAt;
  Instant usedAt;
}
