package vestiary.assigning;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

@Entity
@Table(name = "asked_celebrant")
class AskedRow {

  /** That of the Mass. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID askedId;

  /** Who is named in his place; once somebody else is, the row says nothing any more. */
  UUID namedId;

  @Version int version;
}
