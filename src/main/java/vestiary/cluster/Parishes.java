package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** The parishes of the cluster, those that were merged into others among them. */
@ApplicationScoped
@Transactional
public class Parishes {

  private final ParishRows parishes;
  private final ChurchRows churches;

  Parishes(ParishRows parishes, ChurchRows churches) {
    this.parishes = parishes;
    this.churches = churches;
  }

  /**
   * A parish.
   *
   * @param churches their names, in the order in which people list them
   * @param mergedInto name of the parish into which it was merged; empty while it stands
   * @param mergedFrom since when, ISO 8601; empty likewise
   */
  public record Parish(
      UUID id, String name, List<String> churches, String mergedInto, String mergedFrom) {
    public Parish {
      churches = List.copyOf(churches);
    }

    public boolean isMerged() {
      return !mergedInto.isEmpty();
    }
  }

  /** By name. */
  public List<Parish> all() {
    Map<UUID, List<String>> names =
        churches.inOrder().stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.parishId, Collectors.mapping(row -> row.name, Collectors.toList())));
    Map<UUID, String> called =
        parishes.streamAll().collect(Collectors.toMap(row -> row.id, row -> row.name));
    return parishes.list("order by name").stream()
        .map(
            row ->
                new Parish(
                    row.id,
                    row.name,
                    names.getOrDefault(row.id, List.of()),
                    row.mergedIntoId == null ? "" : called.get(row.mergedIntoId),
                    row.mergedFrom == null ? "" : row.mergedFrom.toString()))
        .toList();
  }

  /**
   * The parish that an address names.
   *
   * @throws Refused if there is none
   */
  public Parish get(String id) {
    UUID known = Asked.id("parish", id);
    return all().stream()
        .filter(parish -> parish.id().equals(known))
        .findFirst()
        .orElseThrow(() -> new Refused(new Refusal.NotThere("parish", id)));
  }

  /** Gives the churches of one parish to another, of which it is part from then on. */
  public void merge(Parish from, Parish into, LocalDate since) {
    churches.list("parishId", from.id()).forEach(church -> church.parishId = into.id());
    ParishRow row = parishes.findById(from.id());
    row.mergedIntoId = into.id();
    row.mergedFrom = since;
    parishes.flush();
  }
}
