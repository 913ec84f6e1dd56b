package vestiary.serving;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.people.Person;
import vestiary.schedule.ReadServing;
import vestiary.schedule.WhoServes;

/** Answers the schedule who serves. */
@ApplicationScoped
class ServingOfMasses implements ReadServing {

  private static final Comparator<WhoServes> ROLE_THEN_NAME =
      Comparator.comparing(WhoServes::as)
          .thenComparing(one -> one.person().shortName())
          .thenComparing(one -> one.person().name())
          .thenComparing(one -> one.person().id());

  private final ServingRows rows;

  ServingOfMasses(ServingRows rows) {
    this.rows = rows;
  }

  @Override
  @Transactional
  public Map<UUID, List<WhoServes>> at(Collection<UUID> masses, Map<UUID, Person> people) {
    return rows.at(List.copyOf(masses)).stream()
        .filter(row -> people.containsKey(row.personId))
        .collect(
            Collectors.groupingBy(
                row -> row.massId,
                Collectors.collectingAndThen(
                    Collectors.mapping(
                        row -> new WhoServes(people.get(row.personId), row.as()),
                        Collectors.toList()),
                    all -> all.stream().sorted(ROLE_THEN_NAME).toList())));
  }
}
