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
import vestiary.access.CurrentVisitor;
import vestiary.access.Secret;
import vestiary.access.Visitor;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Lets in whoever another service knows, if somebody here is linked to them: by a link that lets
 * somebody in, or from their own account. Never by a name or a mail address, which that service may
 * have taken over unproven.
 */
@ApplicationScoped
class EnterByProvider {

  static final Duration GOOD_FOR = Duration.ofMinutes(10);

  private final OpenIdProvider provider;
  private final OutsideSignInRows begun;
  private final OutsideRows outside;
  private final LinkRows links;
  private final CurrentCluster cluster;
  private final CurrentVisitor visitor;
  private final Clock clock;

  EnterByProvider(
      OpenIdProvider provider,
      OutsideSignInRows begun,
      OutsideRows outside,
      LinkRows links,
      CurrentCluster cluster,
      CurrentVisitor visitor,
      Clock clock) {
    this.provider = provider;
    this.begun = begun;
    this.outside = outside;
    this.links = links;
    this.cluster = cluster;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * What somebody sets out for.
   *
   * @param link fingerprint of the link by which they were let in; empty without one
   */
  record Purpose(Optional<UUID> linking, String link, String back) {
    static Purpose signIn(String back) {
      return new Purpose(Optional.empty(), "", back);
    }

    static Purpose byLink(Secret link) {
      return new Purpose(Optional.empty(), link.fingerprint(), Back.WEEK);
    }

    static Purpose linkOwn(UUID user) {
      return new Purpose(Optional.of(user), "", "/account?done=outside");
    }
  }

  /** Whoever came back, and where they go on. */
  record Entered(UUID user, String back, boolean alreadyIn) {}

  /** Begins; the secret is for the browser's cookie alone. */
  Secret begin(Purpose purpose) {
    Secret secret = Secret.fresh(cluster.id());
    Instant now = clock.instant();
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              begun.forgetEnded(now);
              OutsideSignInRow row = new OutsideSignInRow();
              row.fingerprint = secret.fingerprint();
              row.userId = purpose.linking().orElse(null);
              row.link = purpose.link();
              row.back = purpose.back();
              row.endsAt = now.plus(GOOD_FOR);
              begun.persist(row);
            });
    return secret;
  }

  /**
   * Ends where it began; no way is gone twice.
   *
   * @param cookie that the browser kept
   * @throws Refused if another browser began it or it is over, if the service does not vouch, or if
   *     nobody here is linked to whom it knows
   */
  Entered end(String cookie, String code, String state) {
    Secret secret =
        Secret.parse(cookie)
            .filter(s -> s.cluster().equals(cluster.id()))
            .orElseThrow(EnterByProvider::over);
    OutsideWay way = new OutsideWay(secret);
    Purpose purpose = QuarkusTransaction.requiringNew().call(() -> useUp(secret));
    if (!way.state().getValue().equals(state)) {
      throw over();
    }
    // Nothing of the database is held while another server is asked.
    String subject = provider.subject(code, way);
    return QuarkusTransaction.requiringNew().call(() -> entered(purpose, subject));
  }

  private Purpose useUp(Secret secret) {
    OutsideSignInRow row =
        begun.findBegun(secret.fingerprint(), clock.instant()).orElseThrow(EnterByProvider::over);
    begun.delete(row);
    return new Purpose(Optional.ofNullable(row.userId), row.link, row.back);
  }

  private Entered entered(Purpose purpose, String subject) {
    Optional<OutsideRow> known = outside.findBySubject(provider.issuer(), subject);
    if (purpose.linking().isPresent()) {
      return new Entered(linkOwn(purpose.linking().get(), known, subject), purpose.back(), true);
    }
    if (!purpose.link().isEmpty()) {
      return new Entered(byLink(purpose.link(), known, subject), purpose.back(), false);
    }
    return new Entered(known.orElseThrow(this::unknown).id, purpose.back(), false);
  }

  private UUID linkOwn(UUID user, Optional<OutsideRow> known, String subject) {
    boolean isStillTheirs = visitor.visitor() instanceof Visitor.User now && now.id().equals(user);
    if (!isStillTheirs) {
      throw over();
    }
    return keep(user, known, subject);
  }

  private UUID byLink(String link, Optional<OutsideRow> known, String subject) {
    LinkRow row = links.findGood(link, clock.instant()).orElseThrow(EnterByProvider::over);
    UUID user = keep(row.userId, known, subject);
    links.forget(user);
    return user;
  }

  private UUID keep(UUID user, Optional<OutsideRow> known, String subject) {
    if (known.filter(row -> !row.id.equals(user)).isPresent()) {
      throw new Refused(
          new Refusal.Taken("", say("Somebody else here is linked to that account already.")));
    }
    OutsideRow row = outside.findByIdOptional(user).orElseGet(OutsideRow::new);
    row.id = user;
    row.issuer = provider.issuer();
    row.subject = subject;
    row.linkedAt = clock.instant();
    outside.persist(row);
    return user;
  }

  private Refused unknown() {
    return new Refused(
        new Refusal.NotAllowed(
            say(
                "You are known to %s, but nobody here is linked to you. Sign in by name and password and link your account under your own name, or ask whoever keeps the users of your cluster for a link.",
                provider.name())));
  }

  private static Refused over() {
    return new Refused(
        Refusal.Unfit.of(
            "service",
            say(
                "This way of signing in is over, or was begun in another browser. Begin again on the sign-in page.")));
  }
}
