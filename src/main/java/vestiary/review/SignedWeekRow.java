package vestiary.review;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;

/** That a week was looked at, with the week as it stood. */
@Entity
@Table(name = "signed_week")
class SignedWeekRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  LocalDate monday;

  /** The first signature of a week is 1. */
  int turn;

  Instant signedAt;

  /** Who signed, as the history knows them. */
  String visitor;

  String note;

  @JdbcTypeCode(SqlTypes.JSON)
  WeekSeen week;
}
