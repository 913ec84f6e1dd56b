package vestiary.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** A time in which a person is not available. */
@Entity
@Table(name = "absence")
class AbsenceRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID personId;
  Instant starts;

  /** Null until somebody knows. */
  Instant ends;

  /** Empty if nobody said. */
  String reason = "";

  @Version int version;

  Absence toAbsence() {
    return new Absence(id, personId, starts, ends == null ? Absence.UNKNOWN : ends);
  }
}
