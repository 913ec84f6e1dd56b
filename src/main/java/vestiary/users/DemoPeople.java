package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.cluster.ReadCluster;

/** The invented people by whom the demo is entered, one of each role. */
@ApplicationScoped
public class DemoPeople {

  private static final List<SaveUser.Request> PEOPLE =
      List.of(
          request("maren", "Maren Dovecote", "administrator"),
          request("ysolde", "Ysolde Hatherby", "sacristan", "ht", "sa"),
          request("ambrose", "Fr Ambrose Tarnwick", "pastor"),
          request("tobias", "Deacon Tobias Greywater", "minister"),
          request("wilfred", "Wilfred Sedgebank", "reader"));

  private final SaveUser save;
  private final UserRows users;
  private final ReadCluster cluster;

  DemoPeople(SaveUser save, UserRows users, ReadCluster cluster) {
    this.save = save;
    this.users = users;
    this.cluster = cluster;
  }

  /** Lets them in, if they are not there yet; somebody may have renamed their churches. */
  @Transactional
  public void letIn() {
    if (users.ofDemo().isEmpty()) {
      PEOPLE.stream().map(this::withChurchesThere).forEach(save::enterForDemo);
    }
  }

  private SaveUser.Request withChurchesThere(SaveUser.Request person) {
    return new SaveUser.Request(
        person.login(),
        person.name(),
        person.role(),
        person.churches().stream().filter(c -> cluster.findChurch(c).isPresent()).toList());
  }

  private static SaveUser.Request request(
      String login, String name, String role, String... churches) {
    return new SaveUser.Request(login, name, role, List.of(churches));
  }
}
