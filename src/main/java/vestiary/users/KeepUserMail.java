package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;
import vestiary.mail.MailServer;
import vestiary.people.KeepMail;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Keeps where a user is written to, apart from all else. An address counts from the moment that a
 * link which was mailed there is opened; until then the one before it does.
 */
@ApplicationScoped
class KeepUserMail {

  private static final Duration LINK_GOOD_FOR = Duration.ofHours(24);

  private final UserMailRows mails;
  private final UserRows users;
  private final Passwords passwords;
  private final KeepMail addresses;
  private final MailServer mail;
  private final Tries tries;
  private final PublicAddress here;
  private final CurrentCluster current;
  private final Clock clock;

  KeepUserMail(
      UserMailRows mails,
      UserRows users,
      Passwords passwords,
      KeepMail addresses,
      MailServer mail,
      Tries tries,
      PublicAddress here,
      CurrentCluster current,
      Clock clock) {
    this.mails = mails;
    this.users = users;
    this.passwords = passwords;
    this.addresses = addresses;
    this.mail = mail;
    this.tries = tries;
    this.here = here;
    this.current = current;
    this.clock = clock;
  }

  /** What is kept of one user; both empty if nothing is. */
  record Kept(String proven, String wanted) {}

  Kept kept(UUID user) {
    return mails
        .findByIdOptional(user)
        .map(row -> new Kept(row.address, row.wanted))
        .orElse(new Kept("", ""));
  }

  /** Where that user can be written to; empty if nowhere. */
  Optional<String> findProven(UUID user) {
    return Optional.of(kept(user).proven()).filter(address -> !address.isEmpty());
  }

  /**
   * Keeps an address and mails it the link that proves it.
   *
   * @param password the user's own, since whoever has the address can come in by it later
   * @throws Refused if the address is none, the password is wrong, or the mail does not leave
   */
  void ask(UUID id, String typed, String password, String from) {
    Asked asked = new Asked();
    String address = addresses.address("mail", asked.needed("mail", typed, 254), asked);
    asked.refuseIfFaulty();
    UserRow user = QuarkusTransaction.joiningExisting().call(() -> users.findById(id));
    Tries.Try tried = new Tries.Try(Tries.Kind.PROOF, user.login, from, "");
    tries.refuseIfTooMany(tried);
    tries.note(tried);
    if (!user.password.isEmpty() && !passwords.matches(password, user.password)) {
      throw new Refused(
          Refusal.Unfit.of("mail-password", say("This is not your present password.")));
    }
    Secret link = Secret.fresh(current.id());
    QuarkusTransaction.requiringNew().run(() -> await(id, address, link));
    send(address, link);
  }

  private void await(UUID id, String address, Secret link) {
    UserMailRow row = mails.findByIdOptional(id).orElseGet(UserMailRow::new);
    row.id = id;
    row.wanted = address;
    row.fingerprint = link.fingerprint();
    row.endsAt = clock.instant().plus(LINK_GOOD_FOR);
    mails.persist(row);
  }

  private void send(String address, Secret link) {
    try {
      mail.send(
          address,
          say("Is this your mail address?"),
          String.join(
              "\n",
              say(
                  "Somebody who has signed in to Vestiary wants mails to come to this address. If it was you, open this within a day:"),
              here.of("/mail/" + link.text()),
              "",
              say("If it was not, do nothing: without that, nothing is ever sent here again."),
              ""));
    } catch (RuntimeException e) {
      throw new Refused(
          Refusal.Unfit.of(
              "mail",
              say(
                  "The mail server did not take a mail to this address; look whether it is written right, or try again later.")));
    }
  }

  /** Whose address a link proves; empty if it was used, has ended, or never was one. */
  Optional<UserMailRow> findToProve(String link) {
    return QuarkusTransaction.joiningExisting()
        .call(
            () ->
                Secret.parse(link)
                    .filter(secret -> secret.cluster().equals(current.id()))
                    .flatMap(secret -> mails.findToProve(secret.fingerprint(), clock.instant())));
  }

  /**
   * The address is the user's from now on; the link is used up.
   *
   * @throws Refused if the link is not good
   */
  @Transactional
  void prove(String link) {
    UserMailRow row = findToProve(link).orElseThrow(KeepUserMail::notGood);
    row.address = row.wanted;
    row.wanted = "";
    row.fingerprint = "";
  }

  static Refused notGood() {
    return new Refused(
        new Refusal.Beyond(
            say(
                "This link was used already, or has ended. Enter your address again under your own name, and a new one is sent.")));
  }

  /** Forgets every address of that user; once forgotten, doing it again changes nothing. */
  @Transactional
  void forget(UUID user) {
    mails.deleteById(user);
  }
}
