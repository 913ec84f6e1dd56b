package vestiary.device;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** A phone or computer that a sacristy shares. */
@Entity
@Table(name = "shared_device")
class SharedDeviceRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID churchId;
  String name;
  String fingerprint;
  Instant madeAt;
  Instant usedAt;

  /** {@code null} until it is shut out. */
  Instant endedAt;

  int wrongCodes;
  @Version int version;

  /** Whether it asks for an administrator before it does anything more. */
  boolean isStopped() {
    return wrongCodes >= Hands.MOST_WRONG_CODES;
  }
}
