package vestiary.history;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.type.SqlTypes;

/** One change, as the database kept it. */
@Entity
@Immutable
@Table(name = "audit")
class AuditRow {

  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  Instant at;
  String visitor;
  String device;
  String kind;
  UUID rowId;
  UUID[] about;
  String deed;

  @JdbcTypeCode(SqlTypes.JSON)
  Map<String, Object> before;

  @JdbcTypeCode(SqlTypes.JSON)
  Map<String, Object> after;
}
