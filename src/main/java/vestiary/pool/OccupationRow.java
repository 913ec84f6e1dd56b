package vestiary.pool;

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

/** A stretch of time in which a piece is taken; the database refuses two that overlap. */
@Entity
@Table(name = "occupation")
class OccupationRow {

  static final String CARE = "care";
  static final String PLANNED = "planned";
  static final String HELD = "held";
  static final String OUT = "out";

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID pieceId;
  String state;
  Instant starts;

  /** {@code null}: until further notice. */
  Instant ends;

  /** When what was out was taken in again; {@code null} while it is awaited. */
  Instant returnedAt;

  UUID churchId;
  UUID massId;
  String reason = "";
  boolean standing = true;

  /** Who wears it, of a planned one; else {@code null}. */
  String role;

  Integer ordinal;

  /** By which it is lent and not yet back, or borrowed only so long; else {@code null}. */
  @Column(insertable = false, updatable = false)
  UUID lendingId;

  /** By which it is held or out; else {@code null}. */
  UUID reservationId;

  /**
   * Id of the care for which it stands no longer; {@code null} if it stands, or for another reason.
   */
  UUID brokenBy;

  /** How far down the ladder of lawful substitutes it lies. */
  int depth;

  /** What ails a piece in care. */
  String careKind = CareKind.OTHER.id();

  /** In care until somebody says that it is back, even past its end. */
  boolean awaited;

  /** When care was to be over, as it was said; {@code null} if nobody said. */
  Instant promised;

  @Version int version;

  CareKind careKind() {
    return Term.find(CareKind.class, careKind).orElse(CareKind.OTHER);
  }

  boolean isLateAt(Instant moment) {
    return awaited && ends != null && !ends.isAfter(moment);
  }

  boolean isPlanned() {
    return state.equals(PLANNED);
  }

  boolean isHeld() {
    return state.equals(HELD);
  }

  /** Whether it is out or was. */
  boolean isOut() {
    return state.equals(OUT);
  }

  /** Whether it is out and nobody has said that it is back. */
  boolean isAwaited() {
    return isOut() && standing && returnedAt == null;
  }

  /**
   * Until when it keeps the piece away: what is out and overdue, until its return is noted.
   *
   * @return {@link Instant#MAX} where nobody knows
   */
  Instant until(Instant now) {
    boolean overdue = isAwaited() && ends != null && !ends.isAfter(now);
    return overdue || ends == null ? Instant.MAX : ends;
  }

  boolean isDuring(Instant from, Instant until, Instant now) {
    return starts.isBefore(until) && until(now).isAfter(from);
  }
}
