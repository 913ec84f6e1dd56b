package vestiary.users;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;
import vestiary.access.CurrentCluster;
import vestiary.access.DefaultCluster;
import vestiary.access.Role;
import vestiary.cluster.OneByOne;
import vestiary.cluster.ReadCluster;

/**
 * While nobody could let anybody in, whoever starts the server can: a link stands on the console,
 * good for one use. Into the demo its invented people are let.
 */
@ApplicationScoped
class FirstAdministrator {

  private static final Logger LOG = Logger.getLogger("vestiary");
  private static final String LOGIN = "administrator";

  private final CurrentCluster current;
  private final DefaultCluster first;
  private final ReadCluster cluster;
  private final OneByOne oneByOne;
  private final DemoPeople demo;
  private final UserRows users;
  private final SaveUser save;
  private final ChoosePassword choose;
  private final PublicAddress address;

  FirstAdministrator(
      CurrentCluster current,
      DefaultCluster first,
      ReadCluster cluster,
      OneByOne oneByOne,
      DemoPeople demo,
      UserRows users,
      SaveUser save,
      ChoosePassword choose,
      PublicAddress address) {
    this.current = current;
    this.first = first;
    this.cluster = cluster;
    this.oneByOne = oneByOne;
    this.demo = demo;
    this.users = users;
    this.save = save;
    this.choose = choose;
    this.address = address;
  }

  /** After the first cluster was opened. */
  @ActivateRequestContext
  void greet(@Observes @Priority(4000) StartupEvent start) {
    current.assign(first.id());
    QuarkusTransaction.requiringNew().run(this::letSomebodyIn);
  }

  private void letSomebodyIn() {
    // Copies of the server that start together would enter the same people.
    oneByOne.waitForTurn();
    if (cluster.findDemoMonday().isPresent()) {
      demo.letIn();
    } else if (users.countAdministratorsWithPassword() == 0) {
      LOG.infof(
          "Nobody can sign in yet. Open this address once, within three days, to choose the password of \"%s\": %s",
          LOGIN, address.of("/welcome/" + choose.link(administrator()).text()));
    }
  }

  private UUID administrator() {
    return users
        .findByLogin(LOGIN)
        .map(user -> user.id)
        .orElseGet(
            () ->
                save.enter(
                    new SaveUser.Request(
                        LOGIN, "Administrator", Role.ADMINISTRATOR.id(), List.of())));
  }
}
