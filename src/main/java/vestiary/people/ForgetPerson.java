package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Takes a person’s name, mail address and height away; the row stands for what points at it. */
@ApplicationScoped
public class ForgetPerson {

  /** What the record reads from then on. */
  public static final String NAMELESS = "a person who was removed";

  private static final int ENOUGH = 18;

  private final PersonRows people;
  private final PersonMailRows mails;
  private final PersonHeightRows heights;

  ForgetPerson(PersonRows people, PersonMailRows mails, PersonHeightRows heights) {
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
    row.slug = "removed-" + UUID.randomUUID().toString().substring(0, ENOUGH);
    row.name = NAMELESS;
    row.shortName = NAMELESS;
    row.title = "";
    row.erased = true;
    people.flush();
  }
}
