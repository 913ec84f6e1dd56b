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

  /** Whether whoever is written to under that id cares for churches. */
  public boolean isSacristan(UUID reader) {
    return users.list("id = ?1 or personId = ?1", reader).stream()
        .anyMatch(user -> user.toRole() == Role.SACRISTAN);
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

  /** As whom the sacristans of a church are written to who can be, by name. */
  public List<UUID> sacristansOf(UUID church) {
    return sacristans().stream()
        .filter(one -> one.churches().contains(church))
        .map(Sacristan::reader)
        .distinct()
        .toList();
  }

  /**
   * The names by which users are called, by their own ids: what is no matter of the schedule, as a
   * new password, is sent to the user, whoever he is there.
   */
  public Map<UUID, String> names() {
    return users.listAll().stream().collect(Collectors.toMap(user -> user.id, user -> user.name));
  }
}
