package vestiary.inventory;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.vesting.ChurchId;

@Entity
@Table(name = "stocktake")
class StocktakeRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID churchId;
  Instant begunAt;

  /** Mark of the visitor, as in the history. */
  String begunBy;

  /** {@code null} while it is under way; likewise {@code closedAt}. */
  LocalDate heldOn;

  Instant closedAt;
  String closedBy = "";
  boolean elsewhere;

  @Version int version;

  Stocktake toStocktake(List<StocktakeLine> lines) {
    return new Stocktake(
        id,
        new ChurchId(churchId),
        begunAt,
        Stream.ofNullable(heldOn).toList(),
        closedBy,
        elsewhere,
        lines);
  }
}
