package vestiary.sending;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** That a day's mails about something overdue were sent, or at least tried. */
@Entity
@Table(name = "overdue_mail")
class OverdueMailRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID sendingId;
  LocalDate day;
}
