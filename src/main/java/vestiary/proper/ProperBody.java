package vestiary.proper;

import static com.fasterxml.jackson.annotation.JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY;

import com.fasterxml.jackson.annotation.JsonAlias;
import com.fasterxml.jackson.annotation.JsonFormat;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import vestiary.calendar.LocalName;
import vestiary.calendar.Proper;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;

/**
 * A proper as the API writes it: about a celebration of the calendar, or one that it names.
 *
 * @param churches short names; absent for all churches. One may be sent alone, as {@code church}
 * @param onSunday before, after or nearest; absent for its own day
 * @param keptOn date of one year, as in 2027-03-15
 */
record ProperBody(
    String id,
    String celebration,
    String name,
    String latin,
    String spanish,
    Integer month,
    Integer day,
    String colour,
    String place,
    @JsonAlias("church") @JsonFormat(with = ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> churches,
    String onSunday,
    String keptOn) {

  static ProperBody from(EnteredProper proper, Map<ChurchId, String> slugs) {
    LocalName name = proper.findName().orElse(null);
    MonthDay day = proper.findDay().orElse(null);
    return new ProperBody(
        proper.id(),
        name == null ? proper.celebration() : null,
        name == null ? null : name.english(),
        name == null ? null : unlessEmpty(name.latin()),
        name == null ? null : unlessEmpty(name.spanish()),
        day == null ? null : day.getMonthValue(),
        day == null ? null : day.getDayOfMonth(),
        proper.find(Proper.Inscribed.class).map(p -> p.colour().id()).orElse(null),
        proper.findPlace().map(Term::id).orElse(null),
        proper.everywhere() ? null : proper.churches().stream().map(slugs::get).toList(),
        proper.find(Proper.OnSunday.class).map(p -> p.sunday().id()).orElse(null),
        proper.find(Proper.KeptOn.class).map(p -> p.date().toString()).orElse(null));
  }

  SaveProper.Request toRequest() {
    return new SaveProper.Request(
        id,
        celebration,
        name,
        latin,
        spanish,
        month,
        day,
        colour,
        place,
        churches,
        onSunday,
        keptOn,
        null);
  }

  private static String unlessEmpty(String text) {
    return text.isEmpty() ? null : text;
  }
}
