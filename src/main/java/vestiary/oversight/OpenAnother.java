package vestiary.oversight;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.util.UUID;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.access.CurrentVisitor;
import vestiary.access.DefaultCluster;
import vestiary.access.Elsewhere;
import vestiary.access.Visitor;
import vestiary.cluster.ChangeSettings;
import vestiary.cluster.ClusterWord;
import vestiary.cluster.OpenCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.users.LetInAdministrator;

/**
 * Opens another cluster on the server. Whoever does it is its overseer at first; its administrator
 * can take that back.
 */
@ApplicationScoped
class OpenAnother {

  private static final int LONGEST_NAME = 200;

  private final CurrentCluster current;
  private final DefaultCluster first;
  private final CurrentVisitor visitor;
  private final Elsewhere elsewhere;
  private final OpenCluster open;
  private final ChangeSettings settings;
  private final ClusterWord word;
  private final Clusters clusters;
  private final LetInAdministrator letIn;
  private final Overseers overseers;

  OpenAnother(
      CurrentCluster current,
      DefaultCluster first,
      CurrentVisitor visitor,
      Elsewhere elsewhere,
      OpenCluster open,
      ChangeSettings settings,
      ClusterWord word,
      Clusters clusters,
      LetInAdministrator letIn,
      Overseers overseers) {
    this.current = current;
    this.first = first;
    this.visitor = visitor;
    this.elsewhere = elsewhere;
    this.open = open;
    this.settings = settings;
    this.word = word;
    this.clusters = clusters;
    this.letIn = letIn;
    this.overseers = overseers;
  }

  /**
   * What is asked for, as it was typed.
   *
   * @param administrator what the first who keeps its users is called
   */
  record Request(
      String name, String word, String calendar, String timeZone, String administrator) {}

  /**
   * @param link by which its first administrator chooses a password; shown once
   */
  record Opened(Clusters.Named cluster, String link) {}

  /**
   * Opens it, whole or not at all.
   *
   * @throws Refused outside the server's first cluster, and with every unfit field
   */
  Opened open(Request request) {
    if (!current.id().equals(first.id())) {
      throw new Refused(
          new Refusal.NotAllowed(
              say(
                  "Clusters are opened from the first cluster of this server. Ask its administrator.")));
    }
    UUID home = current.id();
    UUID id = UUID.randomUUID();
    return elsewhere.call(id, () -> fill(id, home, request));
  }

  private Opened fill(UUID id, UUID home, Request request) {
    open.open(id, ZoneId.systemDefault());
    ChangeSettings.Request asked = settings(request);
    refuseIfUnfit(request, asked);
    settings.change(asked);
    word.change(request.word());
    if (visitor.visitor() instanceof Visitor.User user) {
      overseers.enter(home, user.id());
    }
    return new Opened(clusters.named(id), letIn.link(request.administrator().strip()));
  }

  private void refuseIfUnfit(Request request, ChangeSettings.Request wanted) {
    Asked asked = new Asked();
    asked.needed("name", request.name(), LONGEST_NAME);
    word.check(request.word(), asked);
    asked.needed("calendar", request.calendar(), LONGEST_NAME);
    asked.needed("timeZone", request.timeZone(), LONGEST_NAME);
    asked.needed("administrator", request.administrator(), LONGEST_NAME);
    if (!asked.isFaulty()) {
      asked.add(settings.findFaults(wanted));
    }
    asked.refuseIfFaulty();
  }

  private static ChangeSettings.Request settings(Request request) {
    return new ChangeSettings.Request(
        request.name(), request.calendar(), null, null, null, request.timeZone(), null, null, null);
  }
}
