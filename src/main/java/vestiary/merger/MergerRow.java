package vestiary.merger;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.calendar.Term;

/** What was decreed and done; never changed afterwards. */
@Entity
@Table(name = "merger")
class MergerRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String kind;

  /** The church that closes or opens again, or whose pieces get another home. */
  UUID churchId;

  /** The parish that is merged into another. */
  UUID parishId;

  /** The parish into which it is merged, or the church that is the pieces' new home. */
  UUID toId;

  LocalDate holdsFrom;

  /** How many pieces got another home or another owner. */
  int pieces;

  /** The decree, as it was typed. */
  String note = "";

  Instant notedAt;

  enum Kind implements Term {
    CLOSING,
    OPENING,
    GOODS,
    MERGING
  }
}
