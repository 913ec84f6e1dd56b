package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Lets people in, and out again. */
@ApplicationScoped
class SignIn {

  /** On a device of one’s own; each day of use begins it anew. */
  static final Duration LASTING = Duration.ofDays(30);

  /** On a shared one, where the cookie also goes with the browser. */
  static final Duration PASSING = Duration.ofHours(12);

  private final UserRows users;
  private final SessionRows sessions;
  private final Passwords passwords;
  private final Tries tries;
  private final KnownDevices devices;
  private final ReadCluster cluster;
  private final CurrentCluster current;
  private final Clock clock;

  SignIn(
      UserRows users,
      SessionRows sessions,
      Passwords passwords,
      Tries tries,
      KnownDevices devices,
      ReadCluster cluster,
      CurrentCluster current,
      Clock clock) {
    this.users = users;
    this.sessions = sessions;
    this.passwords = passwords;
    this.tries = tries;
    this.devices = devices;
    this.cluster = cluster;
    this.current = current;
    this.clock = clock;
  }

  /**
   * What is sent to come in.
   *
   * @param address where the request comes from
   * @param device the cookie by which a browser is known; empty if it has none
   */
  record Attempt(String login, String password, String address, String device) {
    Attempt {
      login = cut(login.strip());
    }
  }

  /**
   * @param device what the cookie is to be by which the browser is known from now on
   */
  record Opened(UUID user, Secret session, Secret device) {}

  private record Found(Optional<UserRow> user, Tries.Try tried) {}

  /**
   * Opens a session for whoever knows name and password.
   *
   * @throws Refused if they do not fit, without telling which of them, or after too many tries
   */
  Opened signIn(Attempt attempt, Duration length) {
    if (attempt.device().isEmpty()) {
      passwords.refuseIfCrowded();
    }
    // No transaction is held open while a password is hashed.
    Found found = QuarkusTransaction.requiringNew().call(() -> find(attempt));
    tries.refuseIfTooMany(found.tried());
    if (!matches(attempt.password(), found)) {
      tries.note(found.tried());
      throw new Refused(
          Refusal.Unfit.of("password", say("The name or the password is wrong. Try again.")));
    }
    tries.forget(found.tried());
    UUID user = found.user().orElseThrow().id;
    Secret device =
        QuarkusTransaction.requiringNew().call(() -> devices.remember(attempt.device(), user));
    return new Opened(user, open(user, length), device);
  }

  private boolean matches(String password, Found found) {
    String hash = found.user().map(user -> user.password).orElse("");
    return found.tried().device().isEmpty()
        ? passwords.matchesOfStranger(password, hash)
        : passwords.matches(password, hash);
  }

  private Found find(Attempt attempt) {
    Optional<UserRow> user = users.findByLogin(attempt.login());
    String device = user.map(u -> devices.fingerprint(attempt.device(), u.id)).orElse("");
    return new Found(
        user, new Tries.Try(Tries.Kind.PASSWORD, attempt.login(), attempt.address(), device));
  }

  /** Nobody has a longer one, and what is tried is kept for a while. */
  static String cut(String login) {
    return login.substring(0, Math.min(login.length(), SaveUser.LONGEST_LOGIN));
  }

  /**
   * Opens a session for one of the people of the demo.
   *
   * @throws Refused if this is no demo, or there is nobody of that id in it
   */
  Secret signInToDemo(String id) {
    UUID user = Asked.id("person of the demo", id);
    boolean there =
        QuarkusTransaction.joiningExisting()
            .call(
                () ->
                    cluster.findDemoMonday().isPresent()
                        && users.findByIdOptional(user).filter(u -> u.demo).isPresent());
    if (!there) {
      throw new Refused(new Refusal.NotThere("person of the demo", id));
    }
    return open(user, PASSING);
  }

  /** Opens a session for somebody who is known already. */
  Secret open(UUID user, Duration length) {
    Secret secret = Secret.fresh(current.id());
    Instant now = clock.instant();
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              SessionRow row = new SessionRow();
              row.userId = user;
              row.fingerprint = secret.fingerprint();
              row.openedAt = now;
              row.seenAt = now;
              row.endsAt = now.plus(length);
              sessions.persist(row);
            });
    return secret;
  }

  /** Ends one session; nothing if there is none such. */
  void end(Secret session) {
    QuarkusTransaction.requiringNew().run(() -> sessions.end(session.fingerprint()));
  }

  /** Ends every session of a user, on every device. */
  void endAll(UUID user) {
    QuarkusTransaction.requiringNew().run(() -> sessions.endAll(user));
  }
}
