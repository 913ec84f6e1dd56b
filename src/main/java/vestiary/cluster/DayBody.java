package vestiary.cluster;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.calendar.Evening;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Omission;
import vestiary.calendar.Reason;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.web.NormWords;

/**
 * A day of a calendar as the API writes it; the first celebration is kept unless one is chosen.
 * Sentences are in the language of the request.
 */
record DayBody(
    LocalDate date,
    String season,
    int week,
    int psalterWeek,
    String sundayCycle,
    String weekdayCycle,
    boolean obligation,
    List<CelebrationBody> celebrations,
    List<OmissionBody> omitted,
    EveningBody evening,
    String reason,
    List<ReasonBody> reasons,
    boolean byPresentNorms) {

  record ReasonBody(String sentence, String source) {
    static ReasonBody from(Reason reason) {
      return new ReasonBody(NormWords.of(reason.said()), reason.source());
    }
  }

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
          NormWords.cited(c.colourReason()));
    }
  }

  record OmissionBody(String id, String name, LocalDate keptOn, String reason, String source) {
    static OmissionBody from(Omission o, Locale locale) {
      LocalDate keptOn = o.keptOn().stream().findFirst().orElse(null);
      return new OmissionBody(
          o.id(), o.name().in(locale), keptOn, NormWords.of(o.why()), o.source());
    }
  }

  record EveningBody(String belongsTo, String leeway, String reason, String source) {
    static EveningBody from(Evening e) {
      String day = e.tomorrow() ? "tomorrow" : "today";
      return new EveningBody(day, e.leeway().id(), NormWords.of(e.why()), e.source());
    }
  }

  static List<DayBody> list(LiturgicalCalendar calendar, Asked.Span span, Locale locale) {
    return calendar.days(span.first(), span.last()).stream().map(d -> from(d, locale)).toList();
  }

  static DayBody from(Day day, Locale locale) {
    return new DayBody(
        day.date(),
        day.season().id(),
        day.week(),
        day.psalterWeek(),
        day.sundayCycle().name(),
        day.weekdayCycle().name(),
        day.obligation(),
        day.celebrations().stream().map(c -> CelebrationBody.from(c, locale)).toList(),
        day.omitted().stream().map(o -> OmissionBody.from(o, locale)).toList(),
        EveningBody.from(day.evening()),
        NormWords.of(day.why()),
        day.reasons().stream().map(ReasonBody::from).toList(),
        day.isByPresentNorms());
  }
}
