package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import vestiary.access.Secret;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Links a user to whom another service knows them as, from their own account. */
@ApplicationScoped
class LinkOutside {

  private final EnterByProvider enter;
  private final OpenIdProvider provider;
  private final OutsideRows outside;
  private final UserRows users;
  private final Passwords passwords;
  private final Tries tries;

  LinkOutside(
      EnterByProvider enter,
      OpenIdProvider provider,
      OutsideRows outside,
      UserRows users,
      Passwords passwords,
      Tries tries) {
    this.enter = enter;
    this.provider = provider;
    this.outside = outside;
    this.users = users;
    this.passwords = passwords;
    this.tries = tries;
  }

  /**
   * Begins the way there.
   *
   * @param password the user's own, so that nobody links themselves at a desk that was left open
   * @param from where the request comes from
   * @throws Refused if no service is named, or the password is wrong
   */
  Secret begin(UUID id, String password, String from) {
    if (!provider.isOn()) {
      throw new Refused(
          new Refusal.Beyond(say("No other service to sign in by is named on this server.")));
    }
    UserRow user = QuarkusTransaction.joiningExisting().call(() -> users.findById(id));
    Tries.Try tried = new Tries.Try(Tries.Kind.PASSWORD, user.login, from, "");
    tries.refuseIfTooMany(tried);
    if (!user.password.isEmpty() && !passwords.matches(password, user.password)) {
      tries.note(tried);
      throw new Refused(
          Refusal.Unfit.of("outside-password", say("This is not your present password.")));
    }
    return enter.begin(EnterByProvider.Purpose.linkOwn(id));
  }

  boolean isLinked(UUID user) {
    return outside.findByIdOptional(user).isPresent();
  }

  /** Parts them; once parted, doing it again changes nothing. */
  @Transactional
  void part(UUID user) {
    outside.deleteById(user);
  }
}
