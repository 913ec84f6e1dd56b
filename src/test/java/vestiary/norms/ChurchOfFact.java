package vestiary.norms;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import vestiary.calendar.AscensionOn;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Colour;
import vestiary.calendar.CorpusChristiOn;
import vestiary.calendar.EpiphanyOn;
import vestiary.calendar.EveningRule;
import vestiary.calendar.Evenings;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.LocalName;
import vestiary.calendar.Proper;
import vestiary.calendar.ProperPlace;
import vestiary.calendar.SundayBeside;
import vestiary.calendar.Term;

/** The church a fact speaks of: a calendar, and what differs from its defaults. */
record ChurchOfFact(String calendar, String options) {

  private static final Map<ChurchOfFact, LiturgicalCalendar> CALENDARS = new ConcurrentHashMap<>();

  LiturgicalCalendar liturgicalCalendar() {
    return CALENDARS.computeIfAbsent(this, ChurchOfFact::build);
  }

  private LiturgicalCalendar build() {
    CalendarSettings settings = CalendarSettings.defaultsOf(calendar);
    List<Proper> propers = new ArrayList<>();
    for (String option : options.isEmpty() ? new String[0] : options.split(" ")) {
      String value = option.substring(option.indexOf('=') + 1);
      switch (option.substring(0, option.indexOf('='))) {
        case "cathedral-elsewhere" -> propers.add(cathedral(MonthDay.parse("--" + value)));
        case "on-sunday-before" -> propers.add(new Proper.OnSunday(value, SundayBeside.BEFORE));
        case "on-sunday-after" -> propers.add(new Proper.OnSunday(value, SundayBeside.AFTER));
        case "titular" -> propers.add(new Proper.Titular(value));
        case "dedication" -> propers.add(new Proper.Dedication(MonthDay.parse("--" + value)));
        default -> {
          String name = option.substring(0, option.indexOf('='));
          Optional<ProperPlace> place = Term.find(ProperPlace.class, name);
          if (place.isPresent()) {
            propers.add(new Proper.Placed(value, place.get()));
          } else {
            settings = with(settings, name, value);
          }
        }
      }
    }
    return LiturgicalCalendar.of(settings, propers);
  }

  private static Proper cathedral(MonthDay day) {
    return new Proper.Inscribed(
        "dedication-of-the-cathedral",
        new LocalName("Dedication of the Cathedral", "", ""),
        day,
        Colour.WHITE,
        ProperPlace.DEDICATION_OF_THE_CATHEDRAL);
  }

  private static CalendarSettings with(CalendarSettings settings, String option, String value) {
    return new CalendarSettings(
        settings.calendar(),
        option.equals("epiphany") ? term(EpiphanyOn.class, value) : settings.epiphany(),
        option.equals("ascension") ? term(AscensionOn.class, value) : settings.ascension(),
        option.equals("corpus-christi")
            ? term(CorpusChristiOn.class, value)
            : settings.corpusChristi(),
        option.equals("evening") ? evenings(value) : settings.evenings());
  }

  private static Evenings evenings(String rule) {
    return new Evenings(
        term(EveningRule.class, rule), Evenings.USUAL.open(), Evenings.USUAL.from());
  }

  private static <T extends Enum<T> & Term> T term(Class<T> type, String id) {
    return Term.find(type, id).orElseThrow();
  }
}
