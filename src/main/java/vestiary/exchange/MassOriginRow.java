package vestiary.exchange;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** Which event of somebody's calendar a Mass was brought in from. */
@Entity
@Table(name = "mass_origin")
class MassOriginRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String uid;

  /** When it would be by the rule of its event; empty without a rule. */
  String instance;

  UUID massId;
  int sequence;

  /** Place, time, length and kind as the calendar had them the last time. */
  String said;
}
