package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Lets somebody in, who then chooses a password by a link. */
@ApplicationScoped
class InviteUser {

  private final SaveUser save;
  private final UserRows users;
  private final ChoosePassword choose;
  private final PublicAddress address;

  InviteUser(SaveUser save, UserRows users, ChoosePassword choose, PublicAddress address) {
    this.save = save;
    this.users = users;
    this.choose = choose;
    this.address = address;
  }

  /**
   * @param link to hand to the user; whoever has it can choose the password
   */
  record Invited(UUID user, String link) {}

  /** Enters somebody new. */
  @Transactional
  Invited enter(SaveUser.Request request) {
    return linked(save.enter(request));
  }

  /** A new link for somebody who has lost the old one, or the password. */
  @Transactional
  Invited again(String id) {
    return linked(users.get(id).id);
  }

  private Invited linked(UUID user) {
    return new Invited(user, address.of("/welcome/" + choose.link(user).text()));
  }
}
