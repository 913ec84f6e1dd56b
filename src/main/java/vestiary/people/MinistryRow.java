package vestiary.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.annotations.TenantId;
import vestiary.vesting.ChurchId;

/** What a person serves, but for the churches. */
@Entity
@Table(name = "ministry")
class MinistryRow {

  /** That of the person. */
  @Id UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String[] languages = {};

  /** As in monday. */
  String[] days = {};

  @Column(name = "most_a_day")
  Integer mostADay;

  String wishes = "";
  String ownSet = "";

  /** Null where what the cluster has for all holds; likewise on Sundays. */
  Integer permittedWeekday;

  Integer permittedSunday;
  String grantedBy = "";
  LocalDate grantedOn;
  @Version Integer version;

  Ministry toMinistry(Set<ChurchId> churches) {
    return new Ministry(
        churches,
        List.of(languages),
        Stream.of(days)
            .map(day -> DayOfWeek.valueOf(day.toUpperCase(Locale.ROOT)))
            .collect(Collectors.toSet()),
        mostADay == null ? 0 : mostADay,
        wishes,
        ownSet,
        permittedWeekday == null
            ? List.of()
            : List.of(
                new Permission(
                    permittedWeekday,
                    permittedSunday,
                    grantedBy,
                    Stream.ofNullable(grantedOn).toList())));
  }
}
