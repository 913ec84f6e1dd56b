package vestiary.pool;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

@Entity
@Table(name = "piece")
class PieceRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String code;
  String kind;

  /** What it may serve as; the first is what it is. */
  String[] colours;

  String shade = "";
  String grade = "";
  String size = "";
  String form = "";
  UUID setId;
  UUID homeId;
  String owner = "";
  String ownerPolicy = OwnerPolicy.FREELY.id();
  String condition = "";
  String place = "";
  boolean staysHome;

  /** By which it is borrowed of another cluster, which the database notes; else {@code null}. */
  @Column(insertable = false, updatable = false)
  UUID lendingId;

  /** For an inventory; likewise what follows. */
  String description = "";

  /** Its maker, and by whose gift it came. */
  String provenance = "";

  String acquired = "";
  boolean precious;

  /** Who keeps it where that is not the sacristy of its church; else empty. */
  String keeper = "";

  /** {@code null} while it is in use. */
  LocalDate withdrawnOn;

  String withdrawnReason = "";
  String withdrawnTo = "";

  @Version int version;

  boolean isInUse() {
    return withdrawnOn == null;
  }
}
