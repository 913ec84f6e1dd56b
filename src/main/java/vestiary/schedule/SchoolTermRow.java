package vestiary.schedule;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.pattern.SchoolTerm;

/** A school term of the cluster; both dates are included. */
@Entity
@Table(name = "school_term")
class SchoolTermRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String name;
  LocalDate starts;
  LocalDate ends;
  @Version int version;

  SchoolTerm toTerm() {
    return new SchoolTerm(name, starts, ends);
  }
}
