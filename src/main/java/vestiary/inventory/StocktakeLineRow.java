package vestiary.inventory;

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

@Entity
@Table(name = "stocktake_line")
class StocktakeLineRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID stocktakeId;
  UUID pieceId;
  String place = "";
  boolean expected;

  /** Id of a finding; empty while nobody has looked. */
  String finding = "";

  String note = "";

  /** {@code null} while nobody has looked. */
  Instant foundAt;

  String settled = "";

  @Version int version;

  StocktakeLine toLine(String code) {
    return new StocktakeLine(
        id,
        code,
        place,
        expected,
        Term.find(Finding.class, finding).stream().toList(),
        note,
        settled);
  }
}
