package vestiary.proper;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** The propers that were entered, titles and dedications aside. */
@ApplicationScoped
@Transactional
public class ReadPropers {

  private final PropersAtHand propers;

  ReadPropers(PropersAtHand propers) {
    this.propers = propers;
  }

  /** All of them, by id. */
  public List<EnteredProper> all() {
    return propers.all();
  }

  /**
   * The one that an address names.
   *
   * @throws Refused if there is none
   */
  public EnteredProper get(String id) {
    return all().stream()
        .filter(proper -> proper.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new Refused(notThere(id)));
  }

  /** What was read so far may be old: it is read anew when it is next asked for. */
  public void forget() {
    propers.forget();
  }

  static Refusal notThere(String id) {
    return new Refusal.NotThere("day of your own", id);
  }
}
