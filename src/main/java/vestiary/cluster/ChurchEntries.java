package vestiary.cluster;

import static vestiary.cluster.SaveChurchWithJourneys.JOURNEY;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import vestiary.calendar.Proper;
import vestiary.problem.Asked;
import vestiary.web.Entries;

/**
 * What stands in the form of a church: what is stored becomes entries, what was typed a request.
 */
final class ChurchEntries {

  static final Map<String, String> NAMES =
      Map.of(
          "titular.name", "titularName",
          "titular.day", "titularDay",
          "titular.colour", "titularColour");

  private static final List<String> FIELDS =
      List.of(
          "slug",
          "name",
          "parish",
          "place",
          "title",
          "titular",
          "titularName",
          "titularMonth",
          "titularDay",
          "titularColour",
          "dedication",
          "setOutMinutes",
          "clearanceMinutes",
          "latitude",
          "longitude");

  private ChurchEntries() {}

  static Entries from(Church church) {
    Entries entries =
        Entries.empty()
            .with("slug", church.slug())
            .with("name", church.name())
            .with("parish", church.parish())
            .with("place", church.place())
            .with("title", church.title())
            .with("dedication", church.findDedication().map(Object::toString).orElse(""))
            .with("setOutMinutes", String.valueOf(church.setOut().toMinutes()))
            .with("clearanceMinutes", String.valueOf(church.clearance().toMinutes()))
            .with("version", String.valueOf(church.version()));
    for (Church.Coordinates where : church.coordinates()) {
      entries =
          entries
              .with("latitude", String.valueOf(where.latitude()))
              .with("longitude", String.valueOf(where.longitude()));
    }
    for (Proper proper : church.propers()) {
      entries = withTitle(entries, proper);
    }
    return entries;
  }

  static SaveChurchWithJourneys.Request request(Entries typed, Asked asked) {
    Map<String, Integer> timed = new HashMap<>();
    Set<String> untimed = new HashSet<>();
    for (String field : typed.values().keySet()) {
      if (field.startsWith(JOURNEY)) {
        Integer minutes = asked.number(field, typed.text(field));
        String to = field.substring(JOURNEY.length());
        if (minutes == null) {
          untimed.add(to);
        } else {
          timed.put(to, minutes);
        }
      }
    }
    return new SaveChurchWithJourneys.Request(church(typed, asked), timed, untimed);
  }

  /** The names of the fields that the form has. */
  static List<String> fields(List<String> otherChurches) {
    List<String> fields = new ArrayList<>(FIELDS);
    otherChurches.forEach(slug -> fields.add(JOURNEY + slug));
    return fields;
  }

  private static Entries withTitle(Entries entries, Proper proper) {
    if (proper instanceof Proper.Titular known) {
      return entries.with("titular", known.celebration());
    }
    if (proper instanceof Proper.OwnTitular own) {
      MonthDay day = own.day();
      return entries
          .with("titularName", own.name().english())
          .with("titularMonth", String.valueOf(day.getMonthValue()))
          .with("titularDay", String.valueOf(day.getDayOfMonth()))
          .with("titularColour", own.colour().id());
    }
    return entries;
  }

  private static SaveChurch.Request church(Entries typed, Asked asked) {
    return new SaveChurch.Request(
        typed.text("slug"),
        typed.text("name"),
        typed.text("parish"),
        typed.text("place"),
        typed.text("title"),
        typed.text("titular"),
        ownTitular(typed, asked),
        typed.text("dedication"),
        asked.number("setOutMinutes", typed.text("setOutMinutes")),
        asked.number("clearanceMinutes", typed.text("clearanceMinutes")),
        asked.decimal("latitude", typed.text("latitude")),
        asked.decimal("longitude", typed.text("longitude")),
        asked.number("version", typed.text("version")));
  }

  private static SaveChurch.OwnTitular ownTitular(Entries typed, Asked asked) {
    boolean isAsked =
        List.of("titularName", "titularMonth", "titularDay").stream()
            .anyMatch(field -> !typed.text(field).isBlank());
    return isAsked
        ? new SaveChurch.OwnTitular(
            typed.text("titularName"),
            asked.number("titularMonth", typed.text("titularMonth")),
            asked.number("titularDay", typed.text("titularDay")),
            typed.text("titularColour"))
        : null;
  }
}
