package vestiary.people;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Keeps how tall priests, deacons and bishops are, for albs that fit. Nobody must say it; whoever
 * asks for it must be one who sets out, which is for pages and resources to see to.
 */
@ApplicationScoped
@Transactional
public class KeepHeight {

  /** In centimetres, of grown people. */
  public static final int LEAST = 120;

  public static final int MOST = 230;

  private final PersonHeightRows heights;
  private final PersonRows people;

  KeepHeight(PersonHeightRows heights, PersonRows people) {
    this.heights = heights;
    this.people = people;
  }

  /** Whether it may be kept how tall such a person is. */
  public static boolean isAskedOf(PersonRole role) {
    return role.isOrdained();
  }

  /**
   * Keeps it instead of what was kept.
   *
   * @param centimetres not given: it is forgotten
   * @throws Refused if there is nobody of that short name, the height is none, or it is not for
   *     this program to know
   */
  public void keep(String slug, Integer centimetres) {
    PersonRow person = people.getBySlug(slug);
    if (!isAskedOf(person.toPerson().role())) {
      throw new Refused(
          new Refusal.AgainstRule(
              "height",
              say(
                  "Heights are kept of priests, deacons and bishops alone; albs of others go by size.")));
    }
    Asked asked = new Asked();
    int given = asked.whole("height", centimetres, LEAST, MOST, 0);
    asked.refuseIfFaulty();
    if (given == 0) {
      heights.deleteById(person.id);
      return;
    }
    PersonHeightRow row = heights.findByIdOptional(person.id).orElseGet(PersonHeightRow::new);
    row.id = person.id;
    row.centimetres = given;
    heights.persist(row);
    heights.flush();
  }

  /** In centimetres; empty if nobody has said. */
  public Optional<Integer> find(String slug) {
    return heights.findByIdOptional(people.getBySlug(slug).id).map(row -> row.centimetres);
  }

  /** Of all of whom it is known, by their ids. */
  public Map<UUID, Integer> all() {
    return heights.streamAll().collect(Collectors.toMap(row -> row.id, row -> row.centimetres));
  }
}
