package vestiary.retention;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;

/** Days, for each that {@link Keeping} has. */
@Entity
@Table(name = "retention")
class RetentionRow {

  /** That of the cluster. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  int historyDays = Keeping.HISTORY.usual();
  int sessionsDays = Keeping.SESSIONS.usual();
  int triesDays = Keeping.TRIES.usual();
  int askingsDays = Keeping.ASKINGS.usual();
  int contactsDays = Keeping.CONTACTS.usual();
  int absencesDays = Keeping.ABSENCES.usual();
  @Version Integer version;

  int days(Keeping keeping) {
    return switch (keeping) {
      case HISTORY -> historyDays;
      case SESSIONS -> sessionsDays;
      case TRIES -> triesDays;
      case ASKINGS -> askingsDays;
      case CONTACTS -> contactsDays;
      case ABSENCES -> absencesDays;
    };
  }

  void keep(Keeping keeping, int days) {
    switch (keeping) {
      case HISTORY -> historyDays = days;
      case SESSIONS -> sessionsDays = days;
      case TRIES -> triesDays = days;
      case ASKINGS -> askingsDays = days;
      case CONTACTS -> contactsDays = days;
      case ABSENCES -> absencesDays = days;
    }
  }
}
