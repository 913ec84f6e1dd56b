package vestiary.label;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** That a code has a label. */
@Entity
@Table(name = "printed_label")
class PrintedLabelRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String code;
  Instant printedAt;
}
