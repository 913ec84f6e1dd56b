package vestiary.people;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import vestiary.cluster.Church;
import vestiary.web.English;

/** How pages say what somebody serves. */
final class MinistryWords {

  private MinistryWords() {}

  /** What the heading of a list does not say: which of them is a bishop or an administrator. */
  static String role(Person person) {
    return person.role() == PersonRole.BISHOP || person.role() == PersonRole.ADMINISTRATOR
        ? person.role().id()
        : "";
  }

  /** "Saint Anne and Holy Trinity"; empty where all are meant. */
  static String churches(Ministry ministry, List<Church> all) {
    return English.list(
        all.stream()
            .filter(church -> ministry.churches().contains(church.id()))
            .map(Church::name)
            .toList());
  }

  /** "English and Spanish"; empty if nobody has said. */
  static String languages(Ministry ministry) {
    return English.list(ministry.languages().stream().map(Tongues::name).toList());
  }

  /** "Mondays and Fridays"; empty if nobody has said. */
  static String days(Ministry ministry) {
    return English.list(ministry.days().stream().sorted().map(MinistryWords::name).toList());
  }

  /** "two on a weekday, three on Sundays and holy days; granted by the bishop on 3 May 2026". */
  static String permission(Permission one) {
    List<String> words = new ArrayList<>();
    words.add(
        "%s on a weekday, %s on Sundays and holy days"
            .formatted(English.count(one.weekday()), English.count(one.sunday())));
    String by = one.grantedBy().isEmpty() ? "" : " by " + one.grantedBy();
    String on = one.findGranted().map(date -> " on " + English.dateAndYear(date)).orElse("");
    if (!(by + on).isEmpty()) {
      words.add("granted" + by + on);
    }
    return String.join("; ", words);
  }

  private static String name(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH) + "s";
  }
}
