package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Refused;

/** Who may come in, for programs. */
@ApplicationScoped
class ReadUsers {

  private final UserRows users;
  private final UserChurchRows churches;
  private final SessionRows sessions;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final Clock clock;

  ReadUsers(
      UserRows users,
      UserChurchRows churches,
      SessionRows sessions,
      ReadCluster cluster,
      FindPeople people,
      Clock clock) {
    this.users = users;
    this.churches = churches;
    this.sessions = sessions;
    this.cluster = cluster;
    this.people = people;
    this.clock = clock;
  }

  /** Everybody, by name. */
  @Transactional
  List<UserBody> all() {
    List<Church> all = cluster.churches();
    return users.inOrder().stream().map(user -> body(user, all)).toList();
  }

  /**
   * One by id.
   *
   * @throws Refused if there is none
   */
  @Transactional
  UserBody one(String id) {
    return body(users.get(id), cluster.churches());
  }

  private UserBody body(UserRow user, List<Church> all) {
    Set<UUID> kept = churches.churchesOf(user.id);
    return new UserBody(
        user.id.toString(),
        user.login,
        user.name,
        user.role,
        all.stream().filter(c -> kept.contains(c.id().value())).map(Church::slug).toList(),
        Optional.ofNullable(user.personId).flatMap(people::find).map(Person::slug).orElse(null),
        !user.password.isEmpty(),
        (int) sessions.countOpen(user.id, clock.instant()),
        null);
  }
}
