package vestiary.review;

import static vestiary.web.Speech.say;

import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import vestiary.people.Person;

/**
 * Puts names and times of the cluster to what is kept by ids and moments.
 *
 * @param people by id, those included who were removed for good
 * @param makers what those are called whom the history knows by their marks
 */
record Reader(ZoneId zone, Map<UUID, Person> people, UnaryOperator<String> makers) {

  Signature signature(SignedWeekRow row) {
    return new Signature(
        row.id, row.turn, row.signedAt.atZone(zone), makers.apply(row.visitor), row.note);
  }

  /** The surname, with the title where a bishop's is due. */
  String called(UUID person) {
    return people.containsKey(person)
        ? people.get(person).tightName()
        : say("somebody who was removed");
  }
}
