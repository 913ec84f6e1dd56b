package vestiary.schedule;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;

/** One Mass or other liturgy; words left empty are left to the calendar. */
@Entity
@Table(name = "mass")
class MassRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID churchId;
  UUID patternId;
  LocalDate patternDate;
  Instant starts;

  /** When and where its pattern has it; {@code null} of a Mass of no pattern. */
  Instant usualStarts;

  UUID usualChurchId;
  int minutes;
  String kind = "";
  String votiveOf = "";
  String leave = "";
  String celebration = "";
  String colour = "";
  UUID celebrantId;

  /** Whether the celebrant was removed for good and nobody is named in his place. */
  boolean celebrantLost;

  int concelebrants;
  int deacons;

  /** Concelebrants and deacons who are known by name. */
  UUID[] namedIds = {};

  @JdbcTypeCode(SqlTypes.JSON)
  List<BringsValue> brings = List.of();

  /** Whether a bishop presides although no bishop is named as celebrant. */
  boolean bishop;

  @JdbcTypeCode(SqlTypes.JSON)
  List<MinistersValue> ministers = List.of();

  /** What whoever presides puts on besides. */
  String[] also = {};

  Integer setOutMinutes;
  String note = "";
  String intention = "";

  /** BCP 47; empty for the first of the cluster. */
  String language = "";

  /** Whether somebody changed it by hand, so that its pattern leaves it alone. */
  boolean touched;

  boolean cancelled;

  /** The Mass for whose sake it is cancelled, or {@code null}. */
  UUID takenOverBy;

  @Version int version;

  /** Makes it a Mass of no pattern, as usual wherever it is. */
  void detach() {
    patternId = null;
    patternDate = null;
    usualStarts = null;
    usualChurchId = null;
  }

  /**
   * Cancels it by hand.
   *
   * @param other where everybody goes instead, or {@code null}
   */
  void giveWayTo(UUID other) {
    cancelled = true;
    touched = true;
    takenOverBy = other;
  }
}
