package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import vestiary.vesting.ChurchId;

/** What people serve. */
@ApplicationScoped
@Transactional
public class ReadMinistries {

  private final MinistryRows ministries;
  private final PersonChurchRows churches;

  ReadMinistries(MinistryRows ministries, PersonChurchRows churches) {
    this.ministries = ministries;
    this.churches = churches;
  }

  /**
   * Of all of whom anything was said, by their ids; of all others {@link Ministry#UNSAID} holds.
   */
  public Map<UUID, Ministry> all() {
    Map<UUID, Set<ChurchId>> where = churches.byPerson();
    Map<UUID, Ministry> all = new HashMap<>();
    where.forEach((person, at) -> all.put(person, new MinistryRow().toMinistry(at)));
    ministries
        .streamAll()
        .forEach(row -> all.put(row.id, row.toMinistry(where.getOrDefault(row.id, Set.of()))));
    return all;
  }

  /** Of one person. */
  public Ministry of(UUID person) {
    return ministries
        .findByIdOptional(person)
        .orElseGet(MinistryRow::new)
        .toMinistry(churches.of(person));
  }
}
