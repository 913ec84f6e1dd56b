package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.calendar.MassKind;
import vestiary.calendar.Season;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.Closings;
import vestiary.cluster.ReadCluster;
import vestiary.pattern.LiturgicalDays;
import vestiary.pattern.Recurrence;
import vestiary.pattern.SchoolTime;
import vestiary.problem.Asked;

/** Reads what was asked about a pattern into its row, and holds it against the calendar. */
@ApplicationScoped
class FillPattern {

  private static final int SHORTEST = 5;
  private static final int LONGEST = 360;
  private static final int USUAL_MINUTES = 60;
  private static final int MOST_EXCEPTIONS = 200;

  private final ReadCluster cluster;
  private final ReadPatternDates dates;

  private final Closings closings;

  FillPattern(ReadCluster cluster, ReadPatternDates dates, Closings closings) {
    this.closings = closings;
    this.cluster = cluster;
    this.dates = dates;
  }

  /** Notes with {@code asked} all that is wrong; the row may be used only if nothing is. */
  void fill(PatternRow row, SavePattern.Request request, Asked asked) {
    SavePattern.Bounds bounds = request.bounds();
    row.starts = asked.date("starts", request.starts());
    fillDays(row, request, asked);
    row.at = asked.time("time", request.time());
    row.minutes = asked.whole("minutes", request.minutes(), SHORTEST, LONGEST, USUAL_MINUTES);
    row.kind = asked.findTerm(MassKind.class, "mass", request.mass()).map(Term::id).orElse("");
    row.concelebrants =
        asked.whole("concelebrants", request.concelebrants(), 0, AskedMinisters.MOST, 0);
    row.deacons = asked.whole("deacons", request.deacons(), 0, AskedMinisters.MOST, 0);
    row.ministers = new AskedMinisters(asked).ministers(request.ministers());
    row.note = asked.text("note", request.note());
    row.language = MassLanguage.read(request.language(), cluster.cluster(), asked);
    asked.text("celebrant", request.celebrant());
    fillBounds(row, bounds, asked);
    String slug = asked.needed("church", request.church(), 40);
    Optional<Church> church = slug.isEmpty() ? Optional.empty() : cluster.findChurch(slug);
    if (church.isEmpty() && !slug.isEmpty()) {
      asked.fault("church", say("church \"%s\" is no church of this cluster.", slug));
    }
    church.ifPresent(c -> place(row, c, asked));
    if (!asked.isFaulty() && isBounded(row) && !dates.read().hasAny(row)) {
      asked.fault(
          row.days.isEmpty() ? "rrule" : "days",
          say(
              "These days never come together in the five years from %s; look at seasons, months, school terms and end.",
              row.starts));
    }
  }

  private void place(PatternRow row, Church church, Asked asked) {
    row.churchId = church.id().value();
    closings
        .find(church.id())
        .filter(from -> row.ends == null || !row.ends.isBefore(from))
        .ifPresent(
            from ->
                asked.fault(
                    "until",
                    say("%s is closed from %s; end it before that day.", church.name(), from)));
  }

  private static void fillDays(PatternRow row, SavePattern.Request request, Asked asked) {
    row.days =
        asked
            .findTerm(LiturgicalDays.class, "days", request.bounds().days())
            .map(Term::id)
            .orElse("");
    String rule = asked.text("rrule", request.rrule());
    if (!row.days.isEmpty() && !rule.isEmpty()) {
      asked.fault("rrule", say("rrule and days both say which days; give one of them."));
    }
    row.rrule = row.days.isEmpty() ? rrule(request.rrule(), row.starts, asked) : "";
  }

  private static String rrule(String given, LocalDate starts, Asked asked) {
    String text = asked.needed("rrule", given, 400);
    if (text.isEmpty()) {
      return "";
    }
    try {
      Recurrence recurrence = Recurrence.parse(text);
      if (!asked.isFaulty() && !recurrence.hasDate(starts)) {
        asked.fault("rrule", say("rrule \"%s\" names no day on or after %s.", text, starts));
      }
      return recurrence.toString();
    } catch (IllegalArgumentException e) {
      asked.fault("rrule", e.getMessage());
      return "";
    }
  }

  private static void fillBounds(PatternRow row, SavePattern.Bounds bounds, Asked asked) {
    row.ends = asked.findDate("until", bounds.until()).orElse(null);
    if (row.ends != null && row.ends.isBefore(row.starts)) {
      asked.fault("until", say("It ends on %s, before it begins on %s.", row.ends, row.starts));
    }
    row.seasons =
        given(bounds.seasons())
            .flatMap(s -> asked.findTerm(Season.class, "seasons", s).stream())
            .distinct()
            .sorted()
            .map(Term::id)
            .toArray(String[]::new);
    row.months =
        given(bounds.months())
            .map(m -> asked.whole("months", m, 1, 12, 1))
            .distinct()
            .sorted()
            .toArray(Integer[]::new);
    row.notInTriduum = Boolean.TRUE.equals(bounds.notInTriduum());
    row.notOnHolyDays = Boolean.TRUE.equals(bounds.notOnHolyDays());
    row.school = asked.term("school", bounds.school(), SchoolTime.ALWAYS).id();
    row.except = except(bounds.except(), asked);
  }

  private static LocalDate[] except(List<String> given, Asked asked) {
    LocalDate[] dates =
        given(given)
            .flatMap(date -> asked.findDate("except", date).stream())
            .distinct()
            .sorted()
            .toArray(LocalDate[]::new);
    if (dates.length > MOST_EXCEPTIONS) {
      asked.fault(
          "except", say("%d days are left out; %d is the most.", dates.length, MOST_EXCEPTIONS));
    }
    return dates;
  }

  /** What a rule of RFC 5545 alone says has been looked at already. */
  private static boolean isBounded(PatternRow row) {
    return !row.days.isEmpty()
        || row.ends != null
        || row.except.length > 0
        || !row.limits().isNone();
  }

  private static <T> Stream<T> given(List<T> list) {
    return list == null ? Stream.empty() : list.stream().filter(one -> one != null);
  }
}
