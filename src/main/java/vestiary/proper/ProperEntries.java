package vestiary.proper;

import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import vestiary.calendar.LocalName;
import vestiary.calendar.Proper;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.vesting.ChurchId;
import vestiary.web.Entries;

/**
 * What stands in the form of a proper: what is stored becomes entries, what was typed a request.
 */
final class ProperEntries {

  /** The fields of both forms, a day of every year and a date of one. */
  static final List<String> FIELDS =
      List.of(
          "celebration",
          "name",
          "latin",
          "spanish",
          "day",
          "month",
          "colour",
          "place",
          "onSunday",
          "keptOn",
          "churches");

  private ProperEntries() {}

  static Entries from(EnteredProper proper, Map<ChurchId, String> slugs) {
    Entries entries =
        Entries.empty()
            .with("celebration", proper.findName().isPresent() ? "" : proper.celebration())
            .with("name", proper.findName().map(LocalName::english).orElse(""))
            .with("latin", proper.findName().map(LocalName::latin).orElse(""))
            .with("spanish", proper.findName().map(LocalName::spanish).orElse(""))
            .with("day", text(proper.findDay().map(MonthDay::getDayOfMonth).orElse(null)))
            .with("month", text(proper.findDay().map(MonthDay::getMonthValue).orElse(null)))
            .with(
                "colour", proper.find(Proper.Inscribed.class).map(p -> p.colour().id()).orElse(""))
            .with("place", proper.findPlace().map(Term::id).orElse(""))
            .with(
                "onSunday", proper.find(Proper.OnSunday.class).map(p -> p.sunday().id()).orElse(""))
            .with("churches", proper.churches().stream().map(slugs::get).toArray(String[]::new))
            .with("version", String.valueOf(proper.version()));
    return proper
        .find(Proper.KeptOn.class)
        .map(kept -> entries.with("keptOn", kept.date().toString()))
        .orElse(entries);
  }

  /** Whether the form asked for a date of one year; only that form has the field. */
  static boolean isOfOneYear(Entries entries) {
    return entries.values().containsKey("keptOn");
  }

  static SaveProper.Request request(Entries typed, Asked asked) {
    if (isOfOneYear(typed) && typed.text("keptOn").isBlank()) {
      asked.fault("keptOn", "keptOn is missing.");
    }
    return new SaveProper.Request(
        null,
        typed.text("celebration"),
        typed.text("name"),
        typed.text("latin"),
        typed.text("spanish"),
        asked.number("month", typed.text("month")),
        asked.number("day", typed.text("day")),
        typed.text("colour"),
        typed.text("place"),
        typed.all("churches"),
        typed.text("onSunday"),
        typed.text("keptOn"),
        asked.number("version", typed.text("version")));
  }

  private static String text(Integer number) {
    return number == null ? "" : String.valueOf(number);
  }
}
