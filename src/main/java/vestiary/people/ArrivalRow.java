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
import vestiary.calendar.Term;

/** When somebody comes to a Mass from outside. */
@Entity
@Table(name = "arrival")
class ArrivalRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  UUID personId;
  Instant arrives;
  String brings = Arrival.Brings.NOT_SAID.id();
  @Version int version;

  Arrival toArrival() {
    return new Arrival(
        massId, personId, arrives, Term.find(Arrival.Brings.class, brings).orElseThrow());
  }
}
