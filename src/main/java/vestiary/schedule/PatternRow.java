package vestiary.schedule;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;

@Entity
@Table(name = "pattern")
class PatternRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID churchId;
  String rrule;
  LocalDate starts;
  LocalTime at;
  int minutes;
  String kind = "";
  UUID celebrantId;
  boolean celebrantLost;
  int concelebrants;
  int deacons;

  @JdbcTypeCode(SqlTypes.JSON)
  List<MinistersValue> ministers = List.of();

  String note = "";
  @Version int version;

  /** The Mass of one date. In spring's gap the clock's next hour is taken, so that none is lost. */
  MassRow on(LocalDate date, ZoneId zone) {
    MassRow mass = new MassRow();
    mass.churchId = churchId;
    mass.patternId = id;
    mass.patternDate = date;
    mass.starts = start(date, zone);
    yieldTo(mass);
    return mass;
  }

  /** Gives a Mass of this pattern what the pattern says of every one. */
  void yieldTo(MassRow mass) {
    mass.minutes = minutes;
    mass.kind = kind;
    mass.celebrantId = celebrantId;
    mass.celebrantLost = celebrantLost;
    mass.concelebrants = concelebrants;
    mass.deacons = deacons;
    mass.ministers = ministers;
    mass.note = note;
  }

  private Instant start(LocalDate date, ZoneId zone) {
    return ZonedDateTime.of(date, at, zone).toInstant();
  }
}
