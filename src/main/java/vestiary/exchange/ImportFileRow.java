package vestiary.exchange;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.type.SqlTypes;

/** A file that somebody sent, for as long as they are at it. */
@Entity
@Table(name = "import_file")
class ImportFileRow {

  /** That of the import. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  byte[] body;

  /** {@code null} until it was said. */
  @JdbcTypeCode(SqlTypes.JSON)
  ChosenColumns chosen;

  Instant expiresAt;
}
