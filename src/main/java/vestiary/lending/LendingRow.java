package vestiary.lending;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;
import vestiary.calendar.Term;

/** Seen in two clusters, and so not kept apart by Hibernate: each query says for which of both. */
@Entity
@Table(name = "lending")
class LendingRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  /** The lender. */
  @Column(name = "cluster_id")
  UUID clusterId;

  @Column(updatable = false)
  UUID borrowerId;

  @Column(updatable = false)
  Instant starts;

  @Column(updatable = false)
  Instant ends;

  String state = LendingState.OFFERED.id();

  @Column(updatable = false)
  @JdbcTypeCode(SqlTypes.JSON)
  List<LentPiece> pieces = List.of();

  String note = "";
  String answer = "";
  String ending = "";

  /** Where they lie, in the borrower's cluster; {@code null} until it is accepted. */
  UUID churchId;

  Instant offeredAt;
  Instant answeredAt;
  Instant endedAt;

  /** The cluster that said they are back. */
  UUID endedBy;

  @Version int version;

  LendingState toState() {
    return Term.find(LendingState.class, state).orElseThrow();
  }
}
