package vestiary.telling;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;

@Entity
@Table(name = "telling")
class TellingRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  int weekday;
  LocalTime hour;
  int officeDays;
  boolean namesPublic;
  @Version int version;

  Telling toTelling() {
    return new Telling(DayOfWeek.of(weekday), hour, officeDays, namesPublic);
  }
}
