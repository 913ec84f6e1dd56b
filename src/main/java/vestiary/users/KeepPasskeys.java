package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Adds and removes the devices that let a user in. */
@ApplicationScoped
class KeepPasskeys {

  private static final int LONGEST_NAME = 100;

  private final PasskeyRows passkeys;
  private final UserRows users;
  private final Challenges challenges;
  private final PasskeyProof proof;
  private final Passwords passwords;
  private final Tries tries;
  private final CurrentCluster current;
  private final Clock clock;

  KeepPasskeys(
      PasskeyRows passkeys,
      UserRows users,
      Challenges challenges,
      PasskeyProof proof,
      Passwords passwords,
      Tries tries,
      CurrentCluster current,
      Clock clock) {
    this.passkeys = passkeys;
    this.users = users;
    this.challenges = challenges;
    this.proof = proof;
    this.passwords = passwords;
    this.tries = tries;
    this.current = current;
    this.clock = clock;
  }

  /**
   * What a device that is to be added must sign.
   *
   * @param password the user's own, so that nobody adds a device at a desk that was left open
   * @param from where the request comes from
   * @throws Refused if the password is wrong, or after too many that were
   */
  PasskeyBody.ToAdd begin(UUID id, String password, String from) {
    UserRow user = QuarkusTransaction.joiningExisting().call(() -> users.findById(id));
    Tries.Try tried = new Tries.Try(Tries.Kind.PASSWORD, user.login, from, "");
    tries.refuseIfTooMany(tried);
    if (!user.password.isEmpty() && !passwords.matches(password, user.password)) {
      tries.note(tried);
      throw new Refused(Refusal.Unfit.of("password", say("This is not your present password.")));
    }
    return new PasskeyBody.ToAdd(
        challenges.toAdd(id).text(),
        proof.site(),
        new UserHandle(current.id(), id).text(),
        user.login,
        user.name,
        PasskeyProof.ALGORITHMS,
        QuarkusTransaction.joiningExisting()
            .call(() -> passkeys.of(id).stream().map(key -> key.credential).toList()),
        Challenges.GOOD_FOR.toMillis());
  }

  /**
   * Keeps the key that a device has made.
   *
   * @throws Refused if it is not the answer to what was asked of that user, or has no name
   */
  void add(UUID user, PasskeyBody.Added added) {
    Asked asked = new Asked();
    String name = asked.needed("name", added.name(), LONGEST_NAME);
    asked.refuseIfFaulty();
    Secret challenge = proof.challenge(added.clientData());
    if (!challenges.answeredToAdd(challenge, user)) {
      throw PasskeyProof.tooOld();
    }
    PasskeyProof.Key key = proof.added(challenge, added);
    QuarkusTransaction.requiringNew().run(() -> keep(user, name, key));
  }

  private void keep(UUID user, String name, PasskeyProof.Key key) {
    PasskeyRow row = new PasskeyRow();
    row.userId = user;
    row.name = name;
    row.credential = key.credential();
    row.key = key.attestation();
    row.counter = key.counter();
    row.addedAt = clock.instant();
    passkeys.persist(row);
  }

  /**
   * Takes one away.
   *
   * @throws Refused if the user has none such
   */
  @Transactional
  void remove(UUID user, String id) {
    if (passkeys.delete("id = ?1 and userId = ?2", Asked.id("device", id), user) == 0) {
      throw new Refused(new Refusal.NotThere("device", id));
    }
  }
}
