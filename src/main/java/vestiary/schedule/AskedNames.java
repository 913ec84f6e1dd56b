package vestiary.schedule;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Objects;
import vestiary.problem.Asked;

/** Concelebrants and deacons by name, as they were typed. */
final class AskedNames {

  private static final int LONGEST = 200;

  private AskedNames() {}

  /** The names, blank ones left out; none if not given. */
  static List<String> of(List<String> given) {
    return given == null
        ? List.of()
        : given.stream()
            .filter(Objects::nonNull)
            .map(String::strip)
            .filter(name -> !name.isEmpty())
            .distinct()
            .toList();
  }

  /** Notes names that are too long, or more of them than there are concelebrants and deacons. */
  static void check(List<String> given, MassRow row, Asked asked) {
    List<String> names = of(given);
    names.forEach(name -> asked.text("named", name, LONGEST));
    int all = row.concelebrants + row.deacons;
    if (names.size() > all) {
      asked.fault(
          "named",
          say(
              "named has %d names for %d concelebrants and deacons; raise their number, or name fewer.",
              names.size(), all));
    }
  }
}
