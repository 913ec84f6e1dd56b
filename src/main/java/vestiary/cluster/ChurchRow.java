package vestiary.cluster;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Duration;
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
import vestiary.calendar.Term;
import vestiary.proper.BindingPropers;
import vestiary.proper.EnteredProper;
import vestiary.proper.TitledChurch;
import vestiary.vesting.ChurchId;

@Entity
@Table(name = "church")
class ChurchRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID parishId;
  String slug;
  String name;
  String place;
  String title;

  /** Id of a celebration, or empty. */
  String titular = "";

  /** Name of a titular that no table has, or empty; the three fields below belong to it. */
  String titularName = "";

  Integer titularMonth;
  Integer titularDay;
  String titularColour = "";
  LocalDate dedication;
  int setOutMinutes;
  int clearanceMinutes;
  Double latitude;
  Double longitude;

  /** First date on which no Mass is said here any more; {@code null} while it is open. */
  LocalDate closedFrom;

  /** Order in which people list the churches. */
  int position;

  @Version int version;

  /**
   * @param entered all propers of the cluster, whomever they bind
   */
  Church toChurch(String parish, List<EnteredProper> entered) {
    return new Church(
        new ChurchId(id),
        slug,
        name,
        parish,
        place,
        title,
        BindingPropers.on(new ChurchId(id), entered, own()),
        dedication == null ? List.of() : List.of(dedication),
        Duration.ofMinutes(setOutMinutes),
        Duration.ofMinutes(clearanceMinutes),
        hasCoordinates() ? List.of(new Church.Coordinates(latitude, longitude)) : List.of(),
        version);
  }

  TitledChurch toTitled() {
    return new TitledChurch(new ChurchId(id), slug, name, own());
  }

  boolean hasCoordinates() {
    return latitude != null && longitude != null;
  }

  /** What its title and its dedication bring. */
  private List<Proper> own() {
    List<Proper> propers = new ArrayList<>();
    if (!titular.isEmpty()) {
      propers.add(new Proper.Titular(titular));
    } else if (!titularName.isEmpty()) {
      propers.add(
          new Proper.OwnTitular(
              new LocalName(titularName, "", ""),
              MonthDay.of(titularMonth, titularDay),
              Term.find(Colour.class, titularColour).orElseThrow()));
    }
    if (dedication != null) {
      propers.add(new Proper.Dedication(MonthDay.from(dedication)));
    }
    return propers;
  }
}
