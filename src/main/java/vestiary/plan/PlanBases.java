package vestiary.plan;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Keeps what plans were made from. */
@ApplicationScoped
class PlanBases implements PanacheRepositoryBase<PlanBasisRow, UUID> {

  private static final Logger LOG = Logger.getLogger(PlanBases.class);

  private final ObjectMapper mapper;

  PlanBases(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** Keeps it in the present transaction. */
  void keep(UUID plan, Basis basis) {
    PlanBasisRow row = new PlanBasisRow();
    row.id = plan;
    row.facts = written(basis);
    getEntityManager().merge(row);
  }

  /** Empty if none was kept, or if an older program kept it in a way that is not read any more. */
  Optional<Basis> find(UUID plan) {
    return findByIdOptional(plan).flatMap(row -> read(row.facts));
  }

  private String written(Basis basis) {
    try {
      return mapper.writeValueAsString(basis);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private Optional<Basis> read(String facts) {
    try {
      return Optional.of(mapper.readValue(facts, Basis.class));
    } catch (JsonProcessingException | IllegalArgumentException e) {
      LOG.infof("What a plan was made from is not read any more: %s", e.getMessage());
      return Optional.empty();
    }
  }
}
