package vestiary.cluster;

import static vestiary.web.Speech.say;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.OfferedCalendar;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Speech;

/** The general calendar and the national ones, for any church that keeps them. */
@Path("/api/calendars")
@Produces(MediaType.APPLICATION_JSON)
class CalendarResource {

  /** Ten years at a time: more would keep one request busy for the others. */
  private static final int LONGEST_SPAN_DAYS = 3_660;

  private final ChurchCalendars calendars;

  CalendarResource(ChurchCalendars calendars) {
    this.calendars = calendars;
  }

  /** A calendar that can be chosen. */
  record CalendarBody(
      String id, String name, String epiphany, String ascension, String corpusChristi) {
    static CalendarBody from(OfferedCalendar offered) {
      CalendarSettings defaults = offered.defaults();
      return new CalendarBody(
          offered.id(),
          offered.name().in(Speech.localeOr(Locale.ENGLISH)),
          defaults.epiphany().id(),
          defaults.ascension().id(),
          defaults.corpusChristi().id());
    }
  }

  @GET
  @Transactional
  public List<CalendarBody> offered() {
    return LiturgicalCalendar.offered().stream().map(CalendarBody::from).toList();
  }

  @GET
  @Transactional
  @Path("/{id}/days")
  public List<DayBody> days(
      @RestPath String id,
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      @QueryParam("epiphany") String epiphany,
      @QueryParam("ascension") String ascension,
      @QueryParam("corpusChristi") String corpusChristi,
      @QueryParam("language") String language) {
    if (LiturgicalCalendar.offered().stream().noneMatch(o -> o.id().equals(id))) {
      throw new Refused(new Refusal.NotThere("calendar", id));
    }
    Options options = new Options(epiphany, ascension, corpusChristi);
    Asked asked = new Asked();
    options.of(CalendarSettings.defaultsOf(id), asked);
    asked.refuseIfFaulty();
    Asked.Span span = span(from, to);
    Locale locale = locale(language);
    Map<Integer, LiturgicalCalendar> years = new HashMap<>();
    return Speech.in(
        locale,
        () ->
            span.first()
                .datesUntil(span.last().plusDays(1))
                .map(
                    date ->
                        DayBody.from(
                            years
                                .computeIfAbsent(
                                    date.getYear(), year -> calendar(id, year, options))
                                .day(date),
                            locale))
                .toList());
  }

  /** An option that is not asked for is the one that the bishops had in that year. */
  private LiturgicalCalendar calendar(String id, int year, Options options) {
    return calendars.of(options.of(CalendarSettings.defaultsOf(id, year), new Asked()), List.of());
  }

  /** What is asked for instead of the options of a calendar; {@code null} where nothing is. */
  private record Options(String epiphany, String ascension, String corpusChristi) {

    CalendarSettings of(CalendarSettings usual, Asked asked) {
      return new CalendarSettings(
          usual.calendar(),
          asked.term("epiphany", epiphany, usual.epiphany()),
          asked.term("ascension", ascension, usual.ascension()),
          asked.term("corpusChristi", corpusChristi, usual.corpusChristi()),
          usual.evenings());
    }
  }

  /** The dates asked for, within what the calendar knows. */
  static Asked.Span span(String from, String to) {
    Asked asked = new Asked();
    Asked.Span span = asked.span(from, to, LONGEST_SPAN_DAYS);
    if (!asked.isFaulty()
        && (span.first().isBefore(LiturgicalCalendar.FIRST)
            || span.last().isAfter(LiturgicalCalendar.LAST))) {
      asked.fault(
          "from",
          say(
              "The calendar is known from %s to %s; %s to %s goes beyond.",
              LiturgicalCalendar.FIRST, LiturgicalCalendar.LAST, span.first(), span.last()));
    }
    asked.refuseIfFaulty();
    return span;
  }

  /**
   * That of the request unless another language is asked for; names without it stay in English, and
   * so do sentences in a language that pages are not written in.
   */
  static Locale locale(String language) {
    return language == null || language.isBlank()
        ? Speech.localeOr(Locale.ENGLISH)
        : Locale.forLanguageTag(Locale.forLanguageTag(language).getLanguage());
  }
}
