package vestiary.ordo;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import com.github.mangstadt.vinnie.io.VObjectPropertyValues;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import vestiary.calendar.Celebration;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.cluster.Church;
import vestiary.web.English;

/**
 * An ordo as a calendar file: every day an event that takes the whole day and keeps nobody busy.
 * The same days give the same bytes whenever they are asked for, so nothing in it is of the clock.
 *
 * <p>Source: RFC 5545; the calendar's name by RFC 7986, 5.1.
 */
final class OrdoCalendar {

  private static final String PRODUCT = "-//Vestiary//Ordo//EN";

  private final Ordo ordo;
  private final OrdoNames names;
  private final DayText text;

  OrdoCalendar(Ordo ordo) {
    this.ordo = ordo;
    this.names = new OrdoNames(ordo.locale());
    this.text = new DayText(ordo);
  }

  /** The whole file, lines folded and ended as RFC 5545, 3.1 asks. */
  String text() {
    return text(List.of(this), "%s, liturgical year %d".formatted(whose(), ordo.year().number()));
  }

  /**
   * Years that follow one another as one calendar, for programs that ask again and again.
   *
   * @param years one or more, of the same cluster or church
   */
  static String feed(List<Ordo> years) {
    List<OrdoCalendar> each = years.stream().map(OrdoCalendar::new).toList();
    return text(each, each.get(0).whose() + ", liturgical calendar");
  }

  private static String text(List<OrdoCalendar> years, String name) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setName(name);
    calendar.setExperimentalProperty("X-WR-CALNAME", VObjectPropertyValues.escape(name));
    years.forEach(year -> year.addTo(calendar));
    return FoldedLines.of(Biweekly.write(calendar).foldLines(false).go());
  }

  private void addTo(ICalendar calendar) {
    for (Day day : ordo.days().all()) {
      calendar.addEvent(event(day, ordo.of(), "", text.of(day)));
      ordo.own(day.date()).forEach(own -> calendar.addEvent(own(own)));
    }
  }

  private String whose() {
    return ordo.findChurch().map(OrdoNames::church).orElse(ordo.cluster().name());
  }

  private VEvent own(Ordo.OwnDay own) {
    String where = OrdoNames.church(own.church()) + ": ";
    return event(own.day(), List.of(own.church()), where, text.ofOwn(own.day()));
  }

  private VEvent event(Day day, List<Church> church, String where, String description) {
    Celebration kept = day.kept();
    VEvent event = new VEvent();
    event.setUid(uid(day.date(), church));
    event.setDateTimeStamp(stamp());
    event.setDateStart(date(day.date()), false);
    event.setDateEnd(date(day.date().plusDays(1)), false);
    event
        .setSummary(
            "%s%s (%s)"
                .formatted(where, kept.name().in(ordo.locale()), English.colours(kept.colours())))
        .setLanguage(language(kept));
    if (!description.isEmpty()) event.setDescription(description);
    event.addCategories(kept.colours().stream().map(Colour::id).toList());
    event.setTransparency(true);
    return event;
  }

  /** The same for the same day of the same church in every file, so that it is never doubled. */
  private String uid(LocalDate date, List<Church> church) {
    String whose = church.stream().map(c -> "-" + c.id().value()).collect(Collectors.joining());
    return date + whose + "@" + ordo.cluster().id();
  }

  /** The beginning of the year that the file is of; when it was made is nobody's concern. */
  private Date stamp() {
    return Date.from(ordo.year().first().atStartOfDay(ZoneOffset.UTC).toInstant());
  }

  private String language(Celebration celebration) {
    String said = names.language(celebration.name());
    return said.isEmpty() ? Locale.ENGLISH.toLanguageTag() : said;
  }

  private static ICalDate date(LocalDate date) {
    return new ICalDate(
        new DateTimeComponents(date.getYear(), date.getMonthValue(), date.getDayOfMonth()), false);
  }
}
