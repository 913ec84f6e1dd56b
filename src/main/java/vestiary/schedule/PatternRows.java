package vestiary.schedule;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class PatternRows implements PanacheRepositoryBase<PatternRow, UUID> {}
