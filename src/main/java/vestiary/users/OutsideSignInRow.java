package vestiary.users;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** A way to another service and back that somebody has begun. */
@Entity
@Table(name = "outside_sign_in")
class OutsideSignInRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String fingerprint;

  /** Who links their account; null for somebody who signs in. */
  UUID userId;

  /** Fingerprint of the link by which somebody was let in; empty without one. */
  String link = "";

  String back;
  Instant endsAt;
}
