package vestiary.onemore;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;
import vestiary.calendar.Term;
import vestiary.vesting.Role;

/** One who came unexpected, with what was found for him. */
@Entity
@Table(name = "one_more")
class OneMoreRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  String role;
  boolean own;

  /** Codes, as they were then. */
  String[] pieces = {};

  /** By what they are let go again. */
  UUID[] held = {};

  @JdbcTypeCode(SqlTypes.JSON)
  List<StepValue> steps = List.of();

  Instant takenAt;
  @Version int version;

  Role role() {
    return Term.find(Role.class, role).orElseThrow();
  }
}
