package vestiary.access;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
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

  Identify(
      CurrentCluster cluster,
      CurrentVisitor visitor,
      DefaultCluster first,
      ServerToken server,
      WhoAsks who) {
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
   * @throws Refused if a token is sent and is not good, so that a program never takes for granted
   *     what everybody may see
   */
  void identify(String authorization, String cookie) {
    if (!authorization.isEmpty()) {
      identifyByToken(authorization);
      return;
    }
    Optional<Secret> session = Secret.parse(cookie).filter(s -> !cookie.isEmpty());
    session.ifPresent(s -> cluster.assign(s.cluster()));
    Optional<Visitor> known = session.flatMap(who::findBySession);
    known.ifPresentOrElse(
        v -> visitor.assign(v, session.orElseThrow()), () -> cluster.assign(first.id()));
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
