package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import vestiary.mail.DoorLinks;

/** The links that lead to a new password, by mail: good once, and for half an hour from then on. */
@ApplicationScoped
class RecoveryLinks implements DoorLinks {

  static final Duration LINK_GOOD_FOR = Duration.ofMinutes(30);

  private final KeepUserMail mails;
  private final ChoosePassword choose;
  private final PublicAddress here;

  RecoveryLinks(KeepUserMail mails, ChoosePassword choose, PublicAddress here) {
    this.mails = mails;
    this.choose = choose;
    this.here = here;
  }

  /** Only for a user whose address was proven, whatever others typed for the person. */
  @Override
  public Optional<String> make(UUID user) {
    return mails
        .findProven(user)
        .map(proven -> here.of("/welcome/" + choose.link(user, LINK_GOOD_FOR).text()));
  }
}
