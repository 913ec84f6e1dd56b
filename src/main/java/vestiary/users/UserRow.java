package vestiary.users;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.access.Role;
import vestiary.calendar.Term;

@Entity
@Table(name = "app_user")
class UserRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  String login;
  String name;
  String role;
  String password = "";
  boolean demo;

  /** Who they are in the schedule; null for nobody. */
  UUID personId;

  @Version int version;

  Role toRole() {
    return Term.find(Role.class, role).orElseThrow();
  }
}
