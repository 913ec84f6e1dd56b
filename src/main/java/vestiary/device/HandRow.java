package vestiary.device;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** That a person acts on the shared devices of a church. */
@Entity
@Table(name = "device_hand")
class HandRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID churchId;
  UUID personId;

  /** Of the code, with salt and parameters; empty where the name alone is asked. */
  String fingerprint;
}
