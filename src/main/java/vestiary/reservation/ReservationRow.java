package vestiary.reservation;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.calendar.Term;

/** A set, or a piece of no set, that somebody set aside for one Mass. */
@Entity
@Table(name = "reservation")
class ReservationRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  UUID churchId;

  /** {@code null} if a piece is held by itself. */
  UUID setId;

  /** {@code null} if a set is held. */
  UUID pieceId;

  String state = ReservationState.HELD.id();

  /** As the history knows whoever it was. */
  String madeBy;

  Instant madeAt;
  @Version int version;

  ReservationState toState() {
    return Term.find(ReservationState.class, state).orElseThrow();
  }

  /** Of the set or of the piece. */
  UUID thing() {
    return setId == null ? pieceId : setId;
  }
}
