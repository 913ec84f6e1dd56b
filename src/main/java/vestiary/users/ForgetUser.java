package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Closes accounts for good, with every trace of who they were for. */
@ApplicationScoped
public class ForgetUser {

  private final UserRows users;
  private final SaveUser save;
  private final FailedSignInRows failed;

  ForgetUser(UserRows users, SaveUser save, FailedSignInRows failed) {
    this.save = save;
    this.users = users;
    this.failed = failed;
  }

  /** An account as it is closed. */
  public record Account(UUID id, String name, String login) {}

  /**
   * The account of that id.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  public Account get(String id) {
    return account(users.get(id));
  }

  /**
   * Those that a person has: said to be theirs, or said to be nobody’s and called as they are.
   *
   * @param names with and without title
   */
  public List<Account> of(UUID person, Set<String> names) {
    Set<String> small =
        names.stream().map(name -> name.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
    return users
        .list("personId = ?1 or personId is null and lower(name) in ?2", person, small)
        .stream()
        .map(ForgetUser::account)
        .toList();
  }

  /**
   * Closes it; sessions, tokens and links end with it, at once and on every device.
   *
   * @throws vestiary.problem.Refused if this would leave the cluster without an administrator
   */
  @Transactional
  public void close(UUID id) {
    failed.delete("lower(login) = lower(?1)", users.findById(id).login);
    save.remove(id.toString());
    users.flush();
  }

  private static Account account(UserRow row) {
    return new Account(row.id, row.name, row.login);
  }
}
