package vestiary.scenario;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.DefaultCluster;
import vestiary.cluster.OpenCluster;
import vestiary.exchange.ScenarioLists;
import vestiary.users.DemoPeople;

/** What a test begins with: a cluster with nothing in it, or the invented one. */
@ApplicationScoped
public class Scenario {

  /** The zone of every cluster that is opened here; its clocks change on other days than ours. */
  public static final ZoneId ZONE = ZoneId.of("America/Chicago");

  private static final String EMPTY = "empty";
  private static final String INVENTED = "invented";

  private final Copy copy;
  private final DefaultCluster first;
  private final CurrentCluster current;
  private final OpenCluster open;
  private final ScenarioLists lists;
  private final DemoPeople people;

  Scenario(
      Copy copy,
      DefaultCluster first,
      CurrentCluster current,
      OpenCluster open,
      ScenarioLists lists,
      DemoPeople people) {
    this.people = people;
    this.copy = copy;
    this.first = first;
    this.current = current;
    this.open = open;
    this.lists = lists;
  }

  /**
   * Forgets every row of every cluster and opens the default one anew, with the usual settings. It
   * keeps its id, which the server has read already and never reads again.
   */
  public void empty() {
    begin(EMPTY, () -> {});
  }

  /** Opens a second cluster, which no request sees unless it is told to. */
  public UUID openAnother() {
    UUID id = UUID.randomUUID();
    open(id);
    return id;
  }

  /** Gives all that the default cluster has to another, and leaves the default one empty. */
  public UUID becomeAnother() {
    UUID other = openAnother();
    copy.move(first.id(), other);
    return other;
  }

  /** Makes the default cluster the invented one, with its fortnight from 30 November 2026. */
  public void load() {
    begin(INVENTED, () -> within(first.id(), lists::bringIn));
  }

  /** Makes the default cluster, already loaded, the demo, with its people. */
  public void becomeDemo() {
    within(
        first.id(),
        () -> {
          open.keepDemoMonday(LocalDate.of(2026, 11, 30));
          people.letIn();
        });
  }

  /** All rows of all clusters as one text: equal texts, equal rows. */
  public String rows() {
    return copy.rows();
  }

  /** Does something in one transaction as a request of that cluster would. */
  public void within(UUID cluster, Runnable work) {
    AnotherRequest.run(() -> inRequest(cluster, work));
  }

  /** The default cluster. */
  public UUID ours() {
    return first.id();
  }

  /** Does something as a job of the server would, which says by itself for whom. */
  public void asJob(Runnable work) {
    AnotherRequest.run(work);
  }

  /** Does something in one transaction as code would that never said for whom. */
  public void withoutCluster(Runnable work) {
    AnotherRequest.run(() -> inNamelessRequest(work));
  }

  @ActivateRequestContext
  void inNamelessRequest(Runnable work) {
    QuarkusTransaction.requiringNew().run(work);
  }

  @ActivateRequestContext
  void inRequest(UUID cluster, Runnable work) {
    current.assign(cluster);
    QuarkusTransaction.requiringNew().run(work);
  }

  private void begin(String name, Runnable fill) {
    if (!copy.isTaken(name)) {
      UUID id = first.id();
      copy.forgetAllRows();
      open(id);
      fill.run();
      copy.take(name);
    }
    copy.restore(name);
  }

  private void open(UUID id) {
    within(id, () -> open.open(id, ZONE));
  }
}
