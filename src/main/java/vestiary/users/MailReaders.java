package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.access.Role;
import vestiary.mail.ReaderAddresses;
import vestiary.people.KeepMail;

/**
 * Who can be written to. A reader is a person of the schedule; or a user, where nobody of the
 * schedule is named for them. A user's own address, which was proven, goes before the one that
 * others typed for the person.
 */
@ApplicationScoped
@Transactional
public class MailReaders implements ReaderAddresses {

  private final UserRows users;
  private final UserChurchRows churches;
  private final KeepUserMail mails;
  private final KeepMail people;

  MailReaders(UserRows users, UserChurchRows churches, KeepUserMail mails, KeepMail people) {
    this.users = users;
    this.churches = churches;
    this.mails = mails;
    this.people = people;
  }

  /**
   * A sacristan with an address.
   *
   * @param name as they sign in
   * @param churches ids of those they care for
   */
  public record Sacristan(UUID reader, String name, Set<UUID> churches) {
    public Sacristan {
      churches = Set.copyOf(churches);
    }
  }

  @Override
  public Optional<String> find(UUID reader) {
    return Stream.concat(
            users.list("id = ?1 or personId = ?1 order by id", reader).stream()
                .flatMap(user -> mails.findProven(user.id).stream()),
            people.find(reader).stream())
        .findFirst();
  }

  /** As whom a user is written to. */
  public UUID of(UUID user) {
    return users
        .findByIdOptional(user)
        .flatMap(row -> Optional.ofNullable(row.personId))
        .orElse(user);
  }

  /** Every sacristan who can be written to, by name. */
  public List<Sacristan> sacristans() {
    return users.inOrder().stream()
        .filter(user -> user.toRole() == Role.SACRISTAN)
        .map(
            user ->
                new Sacristan(
                    user.personId == null ? user.id : user.personId,
                    user.name,
                    churches.churchesOf(user.id)))
        .filter(one -> find(one.reader()).isPresent())
        .toList();
  }

  /** The names by which users are called who are nobody of the schedule. */
  public Map<UUID, String> names() {
    return users.list("personId is null").stream()
        .collect(Collectors.toMap(user -> user.id, user -> user.name));
  }
}
