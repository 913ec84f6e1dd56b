package vestiary.access;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
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
  private final ServerToken server;
  private final WhoAsks who;
  private final SharedDevices devices;

  Identify(
      CurrentCluster cluster,
      CurrentVisitor visitor,
      DefaultCluster first,
      ServerToken server,
      WhoAsks who,
      SharedDevices devices) {
    this.devices = devices;
    this.cluster = cluster;
    this.visitor = visitor;
    this.first = first;
    this.server = server;
    this.who = who;
  }

  /**
   * Notes visitor and cluster; nobody and the first cluster where nothing says otherwise.
   *
   * @param authorization the header of that name; empty if there is none
   * @param cookie of the session; empty if there is none
   * @param device the cookie of a shared device; empty if there is none
   * @throws Refused if a token is sent and is not good, so that a program never takes for granted
   *     what everybody may see
   */
  void identify(String authorization, String cookie, String device) {
    if (!authorization.isEmpty()) {
      identifyByToken(authorization);
      return;
    }
    boolean isKnown =
        identifyBy(cookie, who::findBySession) || identifyBy(device, devices::findDevice);
    if (!isKnown) {
      cluster.assign(first.id());
    }
  }

  private boolean identifyBy(String cookie, Function<Secret, Optional<Visitor>> holder) {
    Optional<Secret> secret = Secret.parse(cookie);
    secret.ifPresent(s -> cluster.assign(s.cluster()));
    Optional<Visitor> known = secret.flatMap(holder);
    known.ifPresent(v -> visitor.assign(v, secret.orElseThrow()));
    return known.isPresent();
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
              "The token in the header Authorization is not known, or has ended. Send one that is good, as Bearer."));
    }
    visitor.assign(known.get());
  }
}
