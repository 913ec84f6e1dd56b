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

/** A set or piece that somebody asks for who cannot simply have it. */
@Entity
@Table(name = "wish")
class WishRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  UUID churchId;

  /** {@code null} if a piece is asked for by itself. */
  UUID setId;

  /** {@code null} if a set is asked for. */
  UUID pieceId;

  /** Church whose sacristan answers. */
  UUID keeperId;

  String state = WishState.OPEN.id();
  String note = "";
  String askedBy;
  Instant askedAt;
  String answer = "";
  String answeredBy = "";

  /** {@code null} until it is answered. */
  Instant answeredAt;

  /** {@code null} until it was said that it is free. */
  Instant toldAt;

  @Version int version;

  WishState toState() {
    return Term.find(WishState.class, state).orElseThrow();
  }

  UUID thing() {
    return setId == null ? pieceId : setId;
  }
}
