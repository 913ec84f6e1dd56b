package vestiary.exchange;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Map;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.type.SqlTypes;

/** One change that an import made, as the database wrote it down. */
@Entity
@Table(name = "import_change")
class ImportChangeRow {

  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID importId;

  /** Name of the table. */
  String kind;

  UUID rowId;

  /** The whole row; {@code null} of one that was entered. */
  @JdbcTypeCode(SqlTypes.JSON)
  Map<String, Object> before;
}
