package vestiary.schedule;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.people.Person;

/** Who serves at a Mass, by name, in the words of pages. */
public final class ServingWords {

  private ServingWords() {}

  /** For example "servers: Anna K., Tom L.; reader: Odo Larkspire"; empty if nobody is named. */
  public static String of(DatedMass mass) {
    Map<ServesAs, List<String>> byRole = new TreeMap<>();
    mass.serving().stream()
        .collect(
            Collectors.groupingBy(
                WhoServes::as,
                TreeMap::new,
                Collectors.mapping(WhoServes::person, Collectors.toList())))
        .forEach((as, people) -> byRole.put(as, people.stream().map(Person::name).toList()));
    return named(byRole);
  }

  /** The same of names by role, in the order of the roles. */
  public static String named(Map<ServesAs, List<String>> byRole) {
    return byRole.entrySet().stream()
        .map(
            one ->
                "%s: %s"
                    .formatted(
                        say(one.getKey().noun(one.getValue().size())),
                        String.join(", ", one.getValue())))
        .collect(Collectors.joining("; "));
  }
}
