package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import vestiary.access.Role;

/** Lets in the first who may let others in: by a link, good once, to choose a password by. */
@ApplicationScoped
public class LetInAdministrator {

  static final String LOGIN = "administrator";

  private final UserRows users;
  private final SaveUser save;
  private final ChoosePassword choose;
  private final PublicAddress address;

  LetInAdministrator(UserRows users, SaveUser save, ChoosePassword choose, PublicAddress address) {
    this.users = users;
    this.save = save;
    this.choose = choose;
    this.address = address;
  }

  /**
   * The whole address of a new link for the administrator of the present cluster, who is entered if
   * nobody signs in by that name yet.
   *
   * @param name what the new one is called
   */
  @Transactional
  public String link(String name) {
    return address.of("/welcome/" + choose.link(administrator(name)).text());
  }

  private UUID administrator(String name) {
    return users
        .findByLogin(LOGIN)
        .map(user -> user.id)
        .orElseGet(
            () ->
                save.enter(new SaveUser.Request(LOGIN, name, Role.ADMINISTRATOR.id(), List.of())));
  }
}
