package vestiary.users;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Observes;
import java.util.UUID;
import org.jboss.logging.Logger;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.access.DefaultCluster;
import vestiary.access.Elsewhere;
import vestiary.cluster.OneByOne;
import vestiary.cluster.ReadCluster;

/**
 * While nobody could let anybody in, whoever starts the server can: a link stands on the console,
 * good for one use. Into the demo its invented people are let.
 */
@ApplicationScoped
class FirstAdministrator {

  private static final Logger LOG = Logger.getLogger("vestiary");

  private final CurrentCluster current;
  private final DefaultCluster first;
  private final Clusters clusters;
  private final Elsewhere elsewhere;
  private final ReadCluster cluster;
  private final OneByOne oneByOne;
  private final DemoPeople demo;
  private final UserRows users;
  private final LetInAdministrator letIn;

  FirstAdministrator(
      CurrentCluster current,
      DefaultCluster first,
      Clusters clusters,
      Elsewhere elsewhere,
      ReadCluster cluster,
      OneByOne oneByOne,
      DemoPeople demo,
      UserRows users,
      LetInAdministrator letIn) {
    this.current = current;
    this.first = first;
    this.clusters = clusters;
    this.elsewhere = elsewhere;
    this.cluster = cluster;
    this.oneByOne = oneByOne;
    this.demo = demo;
    this.users = users;
    this.letIn = letIn;
  }

  /** After the first cluster was opened. */
  @ActivateRequestContext
  void greet(@Observes @Priority(4000) StartupEvent start) {
    current.assign(first.id());
    QuarkusTransaction.requiringNew().run(this::letSomebodyIn);
    clusters.demos().stream().filter(id -> !id.equals(first.id())).forEach(this::letDemoIn);
  }

  private void letSomebodyIn() {
    // Copies of the server that start together would enter the same people.
    oneByOne.waitForTurn();
    if (cluster.findDemoMonday().isPresent()) {
      demo.letIn();
    } else if (users.countAdministratorsWithPassword() == 0) {
      LOG.infof(
          "Nobody can sign in yet. Open this address once, within three days, to choose the password of \"%s\": %s",
          LetInAdministrator.LOGIN, letIn.link("Administrator"));
    }
  }

  private void letDemoIn(UUID other) {
    elsewhere.call(
        other,
        () -> {
          oneByOne.waitForTurn();
          demo.letIn();
          return other;
        });
  }
}
