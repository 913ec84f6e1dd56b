package vestiary.office;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

@Entity
@Table(name = "office_sheet")
class OfficeSheetRow {

  /** That of the Mass. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  /** Null while nobody has said. */
  LocalTime arrival;

  String vestingPlace = "";
  String parking = "";

  /** Null while nobody has said. */
  Integer candidates;

  String company = "";
  String brought = "";
  String wanted = "";
  String note = "";

  /** Null while it is not sent. */
  LocalDate sentOn;

  @Version int version;
}
