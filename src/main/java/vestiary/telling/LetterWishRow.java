package vestiary.telling;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

@Entity
@Table(name = "letter_wish")
class LetterWishRow {

  /** That of the reader. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  boolean friday;
  boolean changes;
  boolean sacristy;
  String language = "";
  @Version int version;
}
