package vestiary.people;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import vestiary.cluster.Church;
import vestiary.web.Speech;

/** How pages say what somebody serves. */
final class MinistryWords {

  private MinistryWords() {}

  /** What the heading of a list does not say: which of them is a bishop or an administrator. */
  static String role(Person person) {
    return person.role() == PersonRole.BISHOP || person.role() == PersonRole.ADMINISTRATOR
        ? Speech.noun(1, person.role().id())
        : "";
  }

  /** "Saint Anne and Holy Trinity"; empty where all are meant. */
  static String churches(Ministry ministry, List<Church> all) {
    return Speech.list(
        all.stream()
            .filter(church -> ministry.churches().contains(church.id()))
            .map(Church::name)
            .toList());
  }

  /** "English and Spanish"; empty if nobody has said. */
  static String languages(Ministry ministry) {
    return Speech.list(ministry.languages().stream().map(Tongues::name).toList());
  }

  /** "Mondays and Fridays"; empty if nobody has said. */
  static String days(Ministry ministry) {
    return Speech.list(ministry.days().stream().sorted().map(MinistryWords::name).toList());
  }

  /** "two on a weekday, three on Sundays and holy days; granted by the bishop on 3 May 2026". */
  static String permission(Permission one) {
    List<String> words = new ArrayList<>();
    words.add(
        say(
            "%s on a weekday, %s on Sundays and holy days",
            Speech.count(one.weekday()), Speech.count(one.sunday())));
    String by = one.grantedBy().isEmpty() ? "" : say(" by %s", one.grantedBy());
    String on = one.findGranted().map(date -> say(" on %s", Speech.dateAndYear(date))).orElse("");
    if (!(by + on).isEmpty()) {
      words.add(say("granted") + by + on);
    }
    return String.join("; ", words);
  }

  private static String name(DayOfWeek day) {
    return Speech.weekdays(day);
  }
}
