package vestiary.remedy;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;

@Entity
@Table(name = "applied_remedy")
class AppliedRemedyRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String clash;

  /** The clash that is only worth knowing and stands in its place; often empty. */
  String leaves = "";

  int place;
  String fingerprint;
  String about;
  String title;
  String sentence;

  @JdbcTypeCode(SqlTypes.JSON)
  Deed deed;

  Instant appliedAt;

  /** {@code null} while it holds. */
  Instant undoneAt;

  /** False once it is undone, or the same clash was mended once more. */
  boolean standing = true;

  @Version int version;
}
