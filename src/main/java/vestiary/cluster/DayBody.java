package vestiary.cluster;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.calendar.Evening;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Omission;
import vestiary.calendar.Term;
import vestiary.problem.Asked;

/** A day of a calendar as the API writes it; the first celebration is kept unless one is chosen. */
record DayBody(
    LocalDate date,
    String season,
    int week,
    String sundayCycle,
    String weekdayCycle,
    boolean obligation,
    List<CelebrationBody> celebrations,
    List<OmissionBody> omitted,
    EveningBody evening,
    String reason) {

  record CelebrationBody(
      String id,
      String name,
      String rank,
      int precedence,
      List<String> colours,
      String source,
      String reason) {
    static CelebrationBody from(Celebration c, Locale locale) {
      return new CelebrationBody(
          c.id(),
          c.name().in(locale),
          c.rank().id(),
          c.precedence().number(),
          c.colours().stream().map(Term::id).toList(),
          c.source(),
          c.colourReason());
    }
  }

  record OmissionBody(String id, String name, String reason, String source) {
    static OmissionBody from(Omission o, Locale locale) {
      return new OmissionBody(o.id(), o.name().in(locale), o.reason(), o.source());
    }
  }

  record EveningBody(String belongsTo, String reason, String source) {
    static EveningBody from(Evening e) {
      return new EveningBody(e.tomorrow() ? "tomorrow" : "today", e.reason(), e.source());
    }
  }

  static List<DayBody> list(LiturgicalCalendar calendar, Asked.Span span, Locale locale) {
    return calendar.days(span.first(), span.last()).stream().map(d -> from(d, locale)).toList();
  }

  private static DayBody from(Day day, Locale locale) {
    return new DayBody(
        day.date(),
        day.season().id(),
        day.week(),
        day.sundayCycle().name(),
        day.weekdayCycle().name(),
        day.obligation(),
        day.celebrations().stream().map(c -> CelebrationBody.from(c, locale)).toList(),
        day.omitted().stream().map(o -> OmissionBody.from(o, locale)).toList(),
        EveningBody.from(day.evening()),
        day.reason());
  }
}
