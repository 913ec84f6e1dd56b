package vestiary.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.calendar.Term;

@Entity
@Table(name = "person")
class PersonRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String slug;
  String name;
  String shortName;
  String title = "";
  String role = PersonRole.PRIEST.id();
  boolean visiting;

  /** Under 18; then the names are the first name and an initial. */
  boolean minor;

  /** Removed for good; the row stands nameless for those that point at it. */
  boolean erased;

  @Version int version;

  Person toPerson() {
    return new Person(
        id,
        slug,
        name,
        shortName,
        title,
        Term.find(PersonRole.class, role).orElseThrow(),
        visiting);
  }
}
