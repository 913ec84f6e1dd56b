package vestiary.telling;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.UUID;

@ApplicationScoped
class WeekToldRows implements PanacheRepositoryBase<WeekToldRow, UUID> {

  /** Whether this call is the first for that day; another copy of the server then waits. */
  boolean isFirst(LocalDate day) {
    if (count("day", day) > 0) {
      return false;
    }
    WeekToldRow row = new WeekToldRow();
    row.day = day;
    persistAndFlush(row);
    return true;
  }
}
