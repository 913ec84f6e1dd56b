package vestiary.proper;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.calendar.Colour;
import vestiary.calendar.LocalName;
import vestiary.calendar.Proper;
import vestiary.calendar.ProperPlace;
import vestiary.calendar.SundayBeside;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;

@Entity
@Table(name = "proper")
class ProperRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String slug;
  String celebration;

  /** Of a celebration that the calendar does not have, or empty. */
  String name;

  String latin;
  String spanish;

  /** Of every year; {@code null} with the day where the celebration keeps the calendar's. */
  Integer month;

  Integer day;
  String colour;

  /** Empty for a Sunday alone and for a single date. */
  String place;

  String onSunday;
  LocalDate keptOn;
  boolean everywhere;

  @Version int version;

  void keep(EnteredProper given) {
    slug = given.id();
    celebration = given.celebration();
    name = given.findName().map(LocalName::english).orElse("");
    latin = given.findName().map(LocalName::latin).orElse("");
    spanish = given.findName().map(LocalName::spanish).orElse("");
    month = given.findDay().map(MonthDay::getMonthValue).orElse(null);
    day = given.findDay().map(MonthDay::getDayOfMonth).orElse(null);
    colour = given.find(Proper.Inscribed.class).map(brought -> brought.colour().id()).orElse("");
    place = given.findPlace().map(Term::id).orElse("");
    onSunday = given.find(Proper.OnSunday.class).map(wish -> wish.sunday().id()).orElse("");
    keptOn = given.find(Proper.KeptOn.class).map(Proper.KeptOn::date).orElse(null);
    everywhere = given.everywhere();
  }

  EnteredProper toEntered(List<ChurchId> churches) {
    return new EnteredProper(slug, celebration, propers(), everywhere, churches, version);
  }

  private List<Proper> propers() {
    List<Proper> propers = new ArrayList<>();
    if (!place.isEmpty()) {
      propers.add(placed(Term.find(ProperPlace.class, place).orElseThrow()));
    }
    if (!onSunday.isEmpty()) {
      SundayBeside sunday = Term.find(SundayBeside.class, onSunday).orElseThrow();
      propers.add(new Proper.OnSunday(celebration, sunday));
    }
    if (keptOn != null) {
      propers.add(new Proper.KeptOn(celebration, keptOn));
    }
    return propers;
  }

  private Proper placed(ProperPlace where) {
    if (month == null) {
      return new Proper.Placed(celebration, where);
    }
    MonthDay on = MonthDay.of(month, day);
    return name.isEmpty()
        ? new Proper.Moved(celebration, where, on)
        : new Proper.Inscribed(
            celebration,
            new LocalName(name, latin, spanish),
            on,
            Term.find(Colour.class, colour).orElseThrow(),
            where);
  }
}
