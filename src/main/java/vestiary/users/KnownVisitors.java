package vestiary.users;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import vestiary.access.Role;
import vestiary.access.Secret;
import vestiary.access.Visitor;
import vestiary.access.WhoAsks;
import vestiary.cluster.ReadCluster;

/**
 * Answers the door. Each look has a transaction of its own, and so a database session that ends
 * with it: one that was opened for a cluster which the secret only claims must see nothing more.
 */
@ApplicationScoped
class KnownVisitors implements WhoAsks {

  /** How exactly it is known when something was last used; each finer step is one more write. */
  private static final Duration NOTED_EVERY = Duration.ofMinutes(10);

  private final UserRows users;
  private final UserChurchRows churches;
  private final SessionRows sessions;
  private final TokenRows tokens;
  private final LinkRows links;
  private final UserMailRows mails;
  private final ReadCluster cluster;
  private final Clock clock;

  KnownVisitors(
      UserRows users,
      UserChurchRows churches,
      SessionRows sessions,
      TokenRows tokens,
      LinkRows links,
      UserMailRows mails,
      ReadCluster cluster,
      Clock clock) {
    this.users = users;
    this.churches = churches;
    this.sessions = sessions;
    this.tokens = tokens;
    this.links = links;
    this.mails = mails;
    this.cluster = cluster;
    this.clock = clock;
  }

  @Override
  public Optional<Visitor> findBySession(Secret secret) {
    Instant now = clock.instant();
    return QuarkusTransaction.requiringNew()
        .call(
            () ->
                sessions
                    .findOpen(secret.fingerprint(), now)
                    .flatMap(
                        session -> {
                          noteSeen(session, now);
                          return visitor(session.userId, false);
                        }));
  }

  @Override
  public Optional<Visitor> findByToken(Secret secret) {
    return find(secret, false);
  }

  @Override
  public Optional<Visitor> findByFeed(Secret secret) {
    return find(secret, true);
  }

  private Optional<Visitor> find(Secret secret, boolean feed) {
    Instant now = clock.instant();
    return QuarkusTransaction.requiringNew()
        .call(
            () ->
                tokens
                    .findGood(secret.fingerprint(), feed, now)
                    .flatMap(
                        token -> {
                          if (isLongAgo(token.usedAt, now)) {
                            token.usedAt = now;
                          }
                          return visitor(token.userId, token.looksOnly);
                        }));
  }

  @Override
  public boolean isLink(Secret secret) {
    Instant now = clock.instant();
    return QuarkusTransaction.requiringNew()
        .call(
            () ->
                links.findGood(secret.fingerprint(), now).isPresent()
                    || mails.findToProve(secret.fingerprint(), now).isPresent());
  }

  @Override
  public boolean isDemo() {
    return QuarkusTransaction.requiringNew().call(() -> cluster.findDemoMonday().isPresent());
  }

  /** A session that is used begins its length anew. */
  private static void noteSeen(SessionRow session, Instant now) {
    if (isLongAgo(session.seenAt, now)) {
      session.endsAt = now.plus(Duration.between(session.seenAt, session.endsAt));
      session.seenAt = now;
    }
  }

  private static boolean isLongAgo(Instant used, Instant now) {
    return used == null || used.plus(NOTED_EVERY).isBefore(now);
  }

  private Optional<Visitor> visitor(UUID id, boolean looksOnly) {
    return users
        .findByIdOptional(id)
        .map(user -> new Visitor.User(id, user.name, user.toRole(), churchesOf(user), looksOnly));
  }

  private Set<UUID> churchesOf(UserRow user) {
    return user.toRole() == Role.SACRISTAN ? churches.churchesOf(user.id) : Set.of();
  }
}
