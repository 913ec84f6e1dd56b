package vestiary.plan;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;
import vestiary.calendar.Term;
import vestiary.pool.Planned;

@Entity
@Table(name = "plan")
class PlanRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  LocalDate firstDate;
  LocalDate lastDate;
  String status = PlanState.QUEUED.id();

  /** {@code null} until there is a first plan. */
  @JdbcTypeCode(SqlTypes.JSON)
  Progress progress;

  /** {@code null} until it is over, and if it failed. */
  @JdbcTypeCode(SqlTypes.JSON)
  PlanResult result;

  /** What was planned before it was applied; {@code null} while it is not. */
  @JdbcTypeCode(SqlTypes.JSON)
  Planned replaced;

  /** Whether it leaves alone whatever no change has touched since the plan that holds. */
  boolean keeping;

  String failure = "";
  boolean cancelled;

  /** How often a copy of the server began it; the last one alone may write. */
  int starts;

  Instant requestedAt;

  /** {@code null} while it is not applied. */
  Instant appliedAt;

  @Version int version;

  PlanState state() {
    return Term.find(PlanState.class, status).orElseThrow();
  }
}
