package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;
import vestiary.people.FindPeople;

/** What ways of coming in leave in the database, written past the pages. */
@ApplicationScoped
class Traces {

  private final UserRows users;
  private final UserMailRows mails;
  private final PasskeyRows passkeys;
  private final OutsideRows outside;
  private final OutsideSignInRows begun;
  private final KnownDevices devices;
  private final Challenges challenges;
  private final FindPeople people;
  private final CurrentCluster current;
  private final Clock clock;

  Traces(
      UserRows users,
      UserMailRows mails,
      PasskeyRows passkeys,
      OutsideRows outside,
      OutsideSignInRows begun,
      KnownDevices devices,
      Challenges challenges,
      FindPeople people,
      CurrentCluster current,
      Clock clock) {
    this.users = users;
    this.mails = mails;
    this.passkeys = passkeys;
    this.outside = outside;
    this.begun = begun;
    this.devices = devices;
    this.challenges = challenges;
    this.people = people;
    this.current = current;
    this.clock = clock;
  }

  /** A row in each of their tables. */
  void leave(UUID user) {
    users.findById(user).personId = people.all().get(0).id();
    mailLink(user);
    passkey(user);
    devices.remember("", user);
    challenges.toAdd(user);
    outside(user);
  }

  private void outside(UUID user) {
    OutsideRow linked = new OutsideRow();
    linked.id = user;
    linked.issuer = "https://sign-in.example";
    linked.subject = "a1";
    linked.linkedAt = clock.instant();
    outside.persist(linked);
    OutsideSignInRow way = new OutsideSignInRow();
    way.userId = user;
    way.fingerprint = Secret.fresh(current.id()).fingerprint();
    way.back = "/week";
    way.endsAt = clock.instant();
    begun.persist(way);
  }

  String mailLink(UUID user) {
    Secret link = Secret.fresh(current.id());
    UserMailRow row = mails.findByIdOptional(user).orElseGet(UserMailRow::new);
    row.id = user;
    row.wanted = "somebody@home.example";
    row.fingerprint = link.fingerprint();
    row.endsAt = clock.instant().plusSeconds(60);
    mails.persist(row);
    return link.text();
  }

  /** Somewhere that a link for a new password is sent. */
  void provenMail(UUID user, String address) {
    UserMailRow row = new UserMailRow();
    row.id = user;
    row.address = address;
    row.endsAt = clock.instant();
    mails.persist(row);
  }

  String passkey(UUID user) {
    PasskeyRow row = new PasskeyRow();
    row.userId = user;
    row.name = "A phone";
    row.credential = UUID.randomUUID().toString();
    row.key = new byte[] {0};
    row.addedAt = clock.instant();
    passkeys.persist(row);
    return row.id.toString();
  }
}
