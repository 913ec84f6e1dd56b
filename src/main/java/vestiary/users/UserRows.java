package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Role;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.problem.Writing;

@ApplicationScoped
class UserRows implements PanacheRepositoryBase<UserRow, UUID> {

  /** Whoever signs in by that name, in small or capital letters. */
  Optional<UserRow> findByLogin(String login) {
    return find("lower(login) = lower(?1)", Writing.tidy(login)).firstResultOptional();
  }

  /** What all but that one sign in by; everybody if it is {@code null}, as nobody's yet. */
  List<String> loginsOfOthers(UUID id) {
    return listAll().stream().filter(user -> !user.id.equals(id)).map(user -> user.login).toList();
  }

  UserRow get(String id) {
    return findByIdOptional(Asked.id("user", id))
        .orElseThrow(() -> new Refused(new Refusal.NotThere("user", id)));
  }

  List<UserRow> inOrder() {
    return list("order by lower(name), id");
  }

  /** Those of the demo, who are let in by one press. */
  List<UserRow> ofDemo() {
    return list("demo order by id");
  }

  /** How many could let others in by a password of their own. */
  long countAdministratorsWithPassword() {
    return count("role = ?1 and password <> ''", Role.ADMINISTRATOR.id());
  }
}
