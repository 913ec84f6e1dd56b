package vestiary.proper;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.vesting.ChurchId;

/** That a proper binds a church; celebration and year stand here for the database to compare. */
@Entity
@Table(name = "proper_church")
class ProperChurchRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID properId;
  String celebration;
  int keptYear;
  UUID churchId;

  static ProperChurchRow of(ProperRow proper, EnteredProper given, ChurchId church) {
    ProperChurchRow row = new ProperChurchRow();
    row.properId = proper.id;
    row.celebration = given.celebration();
    row.keptYear = given.keptYear();
    row.churchId = church.value();
    return row;
  }
}
