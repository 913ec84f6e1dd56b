package vestiary.sentonce;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

/** A form that was sent with a key of its own, and where its answer led. */
@Entity
@Table(name = "sent_form")
class SentFormRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String key;
  Instant begunAt;

  /** Empty while it is worked on. */
  String leadsTo = "";

  boolean answered;
}
