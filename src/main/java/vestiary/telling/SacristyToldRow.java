package vestiary.telling;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.type.SqlTypes;

/** What the sacristans of a church were told last. */
@Entity
@Table(name = "sacristy_told")
class SacristyToldRow {

  /** That of the church. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  LocalDate day;

  @JdbcTypeCode(SqlTypes.JSON)
  ChurchWeek week;
}
