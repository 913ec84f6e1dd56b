package vestiary.sending;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** That a set or a piece went out. */
@Entity
@Table(name = "sending")
class SendingRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  /** Code of the set or piece, as it was then. */
  String item;

  /** {@code null}: outside the cluster. */
  UUID churchId;

  /** Who has it outside the cluster; else empty. */
  String whom = "";

  /** The parish of the church, or whom. */
  String borrower;

  UUID massId;
  Instant wentAt;
  Instant due;
  UUID carrierId;

  /** Who signed for it there. */
  UUID signerId;

  /** Who noted it, as the history of changes knows them. */
  String sentBy = "";

  String condition = "";
  @Version int version;
}
