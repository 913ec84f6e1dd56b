package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.access.CurrentCluster;
import vestiary.access.DefaultCluster;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;

/** The invented people by whom the demo is entered: in its first cluster one of each role. */
@ApplicationScoped
public class DemoPeople {

  private static final List<SaveUser.Request> PEOPLE =
      List.of(
          new SaveUser.Request(
              "maren", "Maren Dovecote", "administrator", List.of(), "maren-dovecote"),
          new SaveUser.Request(
              "ysolde", "Ysolde Hatherby", "sacristan", List.of("ht", "sa"), "ysolde-hatherby"),
          new SaveUser.Request(
              "ambrose", "Fr Ambrose Tarnwick", "pastor", List.of(), "ambrose-tarnwick"),
          new SaveUser.Request(
              "cosmas", "Fr Cosmas Ilverton", "minister", List.of(), "cosmas-ilverton"),
          new SaveUser.Request("wilfred", "Wilfred Sedgebank", "reader", List.of()));

  private static final List<SaveUser.Request> OF_THE_SECOND =
      List.of(
          new SaveUser.Request(
              "honor", "Honor Sandilow", "administrator", List.of(), "honor-sandilow"),
          new SaveUser.Request(
              "gideon", "Gideon Marram", "sacristan", List.of("ss"), "gideon-marram"));

  private final SaveUser save;
  private final UserRows users;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final CurrentCluster current;
  private final DefaultCluster first;

  DemoPeople(
      SaveUser save,
      UserRows users,
      ReadCluster cluster,
      FindPeople people,
      CurrentCluster current,
      DefaultCluster first) {
    this.people = people;
    this.save = save;
    this.users = users;
    this.cluster = cluster;
    this.current = current;
    this.first = first;
  }

  /**
   * Lets them in, if they are not there yet; somebody may have renamed their churches or erased a
   * person.
   */
  @Transactional
  public void letIn() {
    if (users.ofDemo().isEmpty()) {
      boolean isFirst = current.id().equals(first.id());
      (isFirst ? PEOPLE : OF_THE_SECOND)
          .stream().map(this::withWhatIsThere).forEach(save::enterForDemo);
    }
  }

  private SaveUser.Request withWhatIsThere(SaveUser.Request person) {
    return new SaveUser.Request(
        person.login(),
        person.name(),
        person.role(),
        person.churches().stream().filter(c -> cluster.findChurch(c).isPresent()).toList(),
        people.findBySlug(person.person()).map(Person::slug).orElse(""));
  }
}
