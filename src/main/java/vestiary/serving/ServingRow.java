package vestiary.serving;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.calendar.Term;
import vestiary.schedule.ServesAs;

/** Somebody who serves at a Mass. */
@Entity
@Table(name = "serving")
class ServingRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  UUID personId;
  String role = ServesAs.SERVER.id();
  @Version int version;

  ServesAs as() {
    return Term.find(ServesAs.class, role).orElseThrow();
  }
}
