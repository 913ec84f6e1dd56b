package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Takes away all that is said of a person; the row stands nameless for what points at it. */
@ApplicationScoped
public class ForgetPerson {

  /** What the record reads from then on. */
  public static final String NAMELESS = "a person who was removed";

  private static final int ENOUGH = 18;

  private final PersonRows people;
  private final PersonMailRows mails;
  private final PersonHeightRows heights;
  private final AbsenceRows absences;
  private final ArrivalRows arrivals;
  private final MinistryRows ministries;
  private final PersonChurchRows churches;
  private final Children children;

  ForgetPerson(
      PersonRows people,
      PersonMailRows mails,
      PersonHeightRows heights,
      AbsenceRows absences,
      ArrivalRows arrivals,
      MinistryRows ministries,
      PersonChurchRows churches,
      Children children) {
    this.arrivals = arrivals;
    this.ministries = ministries;
    this.churches = churches;
    this.children = children;
    this.absences = absences;
    this.heights = heights;
    this.people = people;
    this.mails = mails;
  }

  /**
   * Does so; the role is kept, since vestments were counted by it.
   *
   * @throws vestiary.problem.Refused if there is nobody of that short name
   */
  @Transactional
  public void forget(String slug) {
    PersonRow row = people.getBySlug(slug);
    mails.deleteById(row.id);
    heights.deleteById(row.id);
    absences.delete("personId", row.id);
    arrivals.delete("personId", row.id);
    ministries.deleteById(row.id);
    churches.delete("personId", row.id);
    children.forget(row.id);
    row.slug = "removed-" + UUID.randomUUID().toString().substring(0, ENOUGH);
    row.name = NAMELESS;
    row.shortName = NAMELESS;
    row.title = "";
    row.minor = false;
    row.erased = true;
    people.flush();
  }
}
