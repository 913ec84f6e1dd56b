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

/** One piece of what went out, and its return. */
@Entity
@Table(name = "sent_piece")
class SentPieceRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID sendingId;

  /** {@code null} once it is no longer in the pool. */
  UUID pieceId;

  String code;

  /** What it is, in words, as it was then. */
  String what;

  String owner;

  /** Whether its owner is another than the borrower. */
  boolean loan;

  String conditionOut = "";
  UUID occupationId;

  /** Occupations that stand no longer since it went, or since it came back. */
  UUID[] displaced = {};

  /** {@code null} while it is out. */
  Instant backAt;

  UUID backId;
  UUID takerId;

  /** Who noted the return; empty until then. */
  String takenInBy = "";

  String conditionBack = "";

  /** The carriage that the return noted; {@code null} if none. */
  UUID movementId;

  @Version int version;
}
