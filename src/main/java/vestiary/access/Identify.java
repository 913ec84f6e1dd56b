package vestiary.access;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Finds who makes a request, and with that its cluster, before anything else is read. */
@ApplicationScoped
class Identify {

  private static final String BEARER = "bearer ";

  private final CurrentCluster cluster;
  private final CurrentVisitor visitor;
  private final DefaultCluster first;
  private final Clusters clusters;
  private final ServerToken server;
  private final WhoAsks who;
  private final LinksInLetters letters;
  private final SharedDevices devices;
  private final Oversees oversees;

  Identify(
      CurrentCluster cluster,
      CurrentVisitor visitor,
      DefaultCluster first,
      Clusters clusters,
      ServerToken server,
      WhoAsks who,
      LinksInLetters letters,
      SharedDevices devices,
      Oversees oversees) {
    this.devices = devices;
    this.cluster = cluster;
    this.visitor = visitor;
    this.first = first;
    this.clusters = clusters;
    this.server = server;
    this.who = who;
    this.letters = letters;
    this.oversees = oversees;
  }

  /**
   * Notes visitor and cluster; nobody and the first cluster where nothing says otherwise.
   *
   * @throws Refused if a token is sent and is not good, so that a program never takes for granted
   *     what everybody may see; or if it asks for a cluster that does not let it in
   */
  void identify(Wish wish) {
    if (!wish.authorization().isEmpty()) {
      identifyByToken(wish.authorization());
      if (!wish.look().isEmpty() && !looks(wish.look())) {
        throw new Refused(new Refusal.NotThere("cluster", wish.look()));
      }
      return;
    }
    if (!wish.key().isEmpty()) {
      identifyByKey(wish.key());
      return;
    }
    Optional<UUID> named = named(wish);
    if (named.isPresent()) {
      cluster.assign(named.get());
      return;
    }
    identifyBySession(wish);
    if (!wish.look().isEmpty()) {
      // Who is let in there no more finds himself at home again.
      looks(wish.look());
    }
  }

  /** Where somebody wants to come in who has not come in yet. */
  private Optional<UUID> named(Wish wish) {
    for (Secret link : wish.secrets()) {
      cluster.assign(link.cluster());
      if (who.isLink(link) || letters.isLink(link)) {
        return Optional.of(link.cluster());
      }
    }
    return wish.place().isEmpty() ? Optional.empty() : clusters.find(wish.place());
  }

  private void identifyBySession(Wish wish) {
    boolean isKnown =
        identifyBy(wish.session(), who::findBySession)
            || identifyBy(wish.device(), devices::findDevice);
    if (!isKnown) {
      cluster.assign(
          wish.home().isEmpty() ? first.id() : clusters.find(wish.home()).orElseGet(first::id));
    }
  }

  private boolean identifyBy(String cookie, Function<Secret, Optional<Visitor>> holder) {
    Optional<Secret> secret = Secret.parse(cookie);
    secret.ifPresent(s -> cluster.assign(s.cluster()));
    Optional<Visitor> known = secret.flatMap(holder);
    known.ifPresent(v -> visitor.assign(v, secret.orElseThrow()));
    return known.isPresent();
  }

  /** Whether the visitor now looks into that cluster as its overseer. */
  private boolean looks(String place) {
    if (!(visitor.visitor() instanceof Visitor.User user)) {
      return false;
    }
    Optional<UUID> wanted = clusters.find(place);
    if (wanted.filter(cluster.id()::equals).isPresent()) {
      return true;
    }
    Optional<Visitor.Overseer> overseer = wanted.flatMap(id -> oversees.find(user, id));
    overseer.ifPresent(
        one -> {
          cluster.assign(wanted.orElseThrow());
          visitor.becomes(one);
        });
    return overseer.isPresent();
  }

  private void identifyByKey(String key) {
    Optional<Secret> secret = Secret.parse(key);
    secret.ifPresent(s -> cluster.assign(s.cluster()));
    Optional<Visitor> known = secret.flatMap(who::findByFeed);
    if (known.isEmpty()) {
      cluster.assign(first.id());
      throw new Refused(
          new Refusal.SignInFirst(
              say(
                  "The address of this calendar has ended. Whoever had it can make a new one under their own name.")));
    }
    visitor.assign(known.get());
  }

  private void identifyByToken(String authorization) {
    String token =
        authorization.regionMatches(true, 0, BEARER, 0, BEARER.length())
            ? authorization.substring(BEARER.length()).strip()
            : "";
    if (server.is(token)) {
      cluster.assign(first.id());
      visitor.assign(new Visitor.KeeperOfServer());
      return;
    }
    Optional<Secret> secret = Secret.parse(token);
    secret.ifPresent(s -> cluster.assign(s.cluster()));
    Optional<Visitor> known = secret.flatMap(who::findByToken);
    if (known.isEmpty()) {
      cluster.assign(first.id());
      throw new Refused(
          new Refusal.SignInFirst(
              say(
                  "The token in the header Authorization is not known, or has ended. Send one that is good, as Bearer.")));
    }
    visitor.assign(known.get());
  }
}
