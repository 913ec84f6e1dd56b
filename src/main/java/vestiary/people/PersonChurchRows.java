package vestiary.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.vesting.ChurchId;

@ApplicationScoped
class PersonChurchRows implements PanacheRepositoryBase<PersonChurchRow, UUID> {

  Set<ChurchId> of(UUID person) {
    return list("personId", person).stream()
        .map(row -> new ChurchId(row.churchId))
        .collect(Collectors.toSet());
  }

  Map<UUID, Set<ChurchId>> byPerson() {
    return listAll().stream()
        .collect(
            Collectors.groupingBy(
                row -> row.personId,
                Collectors.mapping(row -> new ChurchId(row.churchId), Collectors.toSet())));
  }

  /** These and no others. */
  void keep(UUID person, List<UUID> churches) {
    List<PersonChurchRow> kept = list("personId", person);
    kept.stream().filter(row -> !churches.contains(row.churchId)).forEach(this::delete);
    Set<UUID> known = kept.stream().map(row -> row.churchId).collect(Collectors.toSet());
    for (UUID church : churches) {
      if (known.add(church)) {
        PersonChurchRow row = new PersonChurchRow();
        row.personId = person;
        row.churchId = church;
        persist(row);
      }
    }
  }
}
