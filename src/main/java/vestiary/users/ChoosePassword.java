package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Gives people a password of their own: by a link that is good once, or in place of the old. */
@ApplicationScoped
class ChoosePassword {

  static final Duration LINK_GOOD_FOR = Duration.ofDays(3);

  private final UserRows users;
  private final LinkRows links;
  private final SessionRows sessions;
  private final Passwords passwords;
  private final ReadCluster cluster;
  private final CurrentCluster current;
  private final Clock clock;

  ChoosePassword(
      UserRows users,
      LinkRows links,
      SessionRows sessions,
      Passwords passwords,
      ReadCluster cluster,
      CurrentCluster current,
      Clock clock) {
    this.users = users;
    this.links = links;
    this.sessions = sessions;
    this.passwords = passwords;
    this.cluster = cluster;
    this.current = current;
    this.clock = clock;
  }

  /** Makes a link for a user; those made before stay good until one of them is used. */
  Secret link(UUID user) {
    return link(user, LINK_GOOD_FOR);
  }

  /** The same, good for so long. */
  Secret link(UUID user, Duration goodFor) {
    Secret secret = Secret.fresh(current.id());
    QuarkusTransaction.joiningExisting()
        .run(
            () -> {
              LinkRow row = new LinkRow();
              row.userId = user;
              row.fingerprint = secret.fingerprint();
              row.endsAt = clock.instant().plus(goodFor);
              links.persist(row);
            });
    return secret;
  }

  /** Whom a link is for; empty if it was used, has ended, or never was one. */
  Optional<UserRow> findOwner(String link) {
    return QuarkusTransaction.joiningExisting()
        .call(
            () ->
                Secret.parse(link)
                    .filter(secret -> secret.cluster().equals(current.id()))
                    .flatMap(secret -> links.findGood(secret.fingerprint(), clock.instant()))
                    .flatMap(row -> users.findByIdOptional(row.userId)));
  }

  /**
   * Chooses it by a link, which is used up then.
   *
   * @return the user
   * @throws Refused if the link is not good, or the password is none that can be taken
   */
  UUID byLink(String link, String password, String again) {
    UserRow user =
        findOwner(link)
            .orElseThrow(
                () ->
                    new Refused(
                        new Refusal.Beyond(say("This link was used already, or has ended."))));
    keep(user, password, again);
    return user.id;
  }

  /**
   * Changes it; every session ends with the old one.
   *
   * @throws Refused if the old one is wrong, or the new one none that can be taken
   */
  void inPlaceOf(UUID id, String old, String password, String again) {
    UserRow user = QuarkusTransaction.joiningExisting().call(() -> users.findById(id));
    if (!user.password.isEmpty() && !passwords.matches(old, user.password)) {
      throw new Refused(Refusal.Unfit.of("old", say("This is not your present password.")));
    }
    keep(user, password, again);
  }

  private void keep(UserRow user, String password, String again) {
    Asked asked = new Asked();
    passwords
        .findFault(password, List.of(user.login, user.name, cluster.cluster().name(), "vestiary"))
        .ifPresent(fault -> asked.fault("password", fault));
    if (!password.equals(again)) {
      asked.fault("again", say("Both must be the same."));
    }
    asked.refuseIfFaulty();
    String hash = passwords.hash(password);
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              users.findById(user.id).password = hash;
              links.forget(user.id);
              sessions.endAll(user.id);
            });
  }
}
