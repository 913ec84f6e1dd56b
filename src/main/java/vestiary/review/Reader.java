package vestiary.review;

import static vestiary.web.Speech.say;

import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import vestiary.calendar.Term;
import vestiary.people.Person;
import vestiary.schedule.ServesAs;
import vestiary.schedule.ServingWords;

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

  /** For example "servers: Anna K., Tom L.; reader: Odo Larkspire"; empty if nobody is named. */
  String serving(MassSeen mass) {
    return ServingWords.named(
        mass.serving().stream()
            .collect(
                Collectors.groupingBy(
                    one -> Term.find(ServesAs.class, one.role()).orElseThrow(),
                    TreeMap::new,
                    Collectors.mapping(one -> name(one.person()), Collectors.toList()))));
  }

  /** Of a child the first name and an initial. */
  private String name(UUID person) {
    return people.containsKey(person) ? people.get(person).name() : say("somebody who was removed");
  }

  /** The surname, with the title where a bishop's is due. */
  String called(UUID person) {
    return people.containsKey(person)
        ? people.get(person).tightName()
        : say("somebody who was removed");
  }
}
