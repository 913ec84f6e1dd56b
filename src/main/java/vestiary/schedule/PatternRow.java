package vestiary.schedule;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;
import vestiary.calendar.Season;
import vestiary.calendar.Term;
import vestiary.pattern.Limits;
import vestiary.pattern.LiturgicalDays;
import vestiary.pattern.LocalHour;
import vestiary.pattern.MassPattern;
import vestiary.pattern.Recurrence;
import vestiary.pattern.SchoolTime;

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

  /** By RFC 5545; empty where {@link #days} says them. */
  String rrule = "";

  /** Days of the calendar, by the id of {@link LiturgicalDays}; empty where the rule says them. */
  String days = "";

  LocalDate starts;

  /** Last date, included; {@code null} if there is none. */
  LocalDate ends;

  String[] seasons = {};
  Integer[] months = {};
  boolean notInTriduum;
  boolean notOnHolyDays;
  String school = SchoolTime.ALWAYS.id();

  @Column(name = "except_dates")
  LocalDate[] except = {};

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

  /** BCP 47; empty for the first of the cluster. */
  String language = "";

  @Version int version;

  /** The Mass of one date. In spring's gap the clock's next hour is taken, so that none is lost. */
  MassRow on(LocalDate date, ZoneId zone) {
    MassRow mass = new MassRow();
    place(mass, date, zone);
    yieldTo(mass);
    return mass;
  }

  /** Puts a Mass where this pattern has that of the date. */
  void place(MassRow mass, LocalDate date, ZoneId zone) {
    mass.churchId = churchId;
    mass.starts = start(date, zone);
    mass.minutes = minutes;
    claim(mass, date, zone);
  }

  /** Makes a Mass this pattern's own of that date, and leaves it where it is. */
  void claim(MassRow mass, LocalDate date, ZoneId zone) {
    mass.patternId = id;
    mass.patternDate = date;
    mass.usualStarts = start(date, zone);
    mass.usualChurchId = churchId;
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
    mass.language = language;
  }

  /** Whether a Mass has all that {@link #yieldTo} would give it. */
  boolean hasYielded(MassRow mass) {
    return mass.minutes == minutes
        && mass.kind.equals(kind)
        && Objects.equals(mass.celebrantId, celebrantId)
        && mass.celebrantLost == celebrantLost
        && mass.concelebrants == concelebrants
        && mass.deacons == deacons
        && mass.ministers.equals(ministers)
        && mass.note.equals(note)
        && mass.language.equals(language);
  }

  /** When it begins on that date. */
  Instant start(LocalDate date, ZoneId zone) {
    return new LocalHour(at, zone).on(date);
  }

  /** Its days, whatever the hour. */
  MassPattern toPattern() {
    return new MassPattern(
        days.isEmpty()
            ? Recurrence.parse(rrule)
            : Term.find(LiturgicalDays.class, days).orElseThrow(),
        starts,
        ends == null ? LocalDate.MAX : ends,
        limits(),
        Set.of(except));
  }

  Limits limits() {
    return new Limits(
        Stream.of(seasons)
            .map(season -> Term.find(Season.class, season).orElseThrow())
            .collect(Collectors.toSet()),
        Stream.of(months).map(Month::of).collect(Collectors.toSet()),
        notInTriduum,
        notOnHolyDays,
        Term.find(SchoolTime.class, school).orElseThrow());
  }

  /** Another of the same, not kept yet. */
  PatternRow copy() {
    PatternRow other = new PatternRow();
    other.take(this);
    return other;
  }

  /** Becomes what the other is, and keeps its id. */
  void take(PatternRow other) {
    churchId = other.churchId;
    rrule = other.rrule;
    days = other.days;
    starts = other.starts;
    ends = other.ends;
    notInTriduum = other.notInTriduum;
    notOnHolyDays = other.notOnHolyDays;
    school = other.school;
    at = other.at;
    minutes = other.minutes;
    kind = other.kind;
    celebrantId = other.celebrantId;
    celebrantLost = other.celebrantLost;
    concelebrants = other.concelebrants;
    deacons = other.deacons;
    ministers = other.ministers;
    note = other.note;
    language = other.language;
    seasons = other.seasons.clone();
    months = other.months.clone();
    except = other.except.clone();
  }
}
