package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.web.DayWords;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** Says on which days a pattern would have Mass, while it is being typed. Nothing is kept. */
@ApplicationScoped
class ShowPreview {

  private static final int SHOWN = 8;

  private final FillPattern fill;
  private final ReadPatternDates dates;
  private final ReadCluster cluster;
  private final Clock clock;

  ShowPreview(FillPattern fill, ReadPatternDates dates, ReadCluster cluster, Clock clock) {
    this.fill = fill;
    this.dates = dates;
    this.cluster = cluster;
    this.clock = clock;
  }

  PatternPreview of(Entries typed) {
    Asked asked = new Asked();
    PatternRow row = new PatternRow();
    fill.fill(row, PatternEntries.request(typed, List.of(), asked), asked);
    return asked.isFaulty() ? missing(asked.faults(), typed) : of(row);
  }

  private static PatternPreview missing(List<FieldFault> faults, Entries typed) {
    boolean begun = !typed.text("church").isEmpty() && !typed.text("time").isEmpty();
    String sentence =
        begun
            ? faults.stream()
                .map(FieldFault::besideField)
                .distinct()
                .collect(Collectors.joining(" "))
            : say("Choose a church, days and an hour; the next Masses then stand here.");
    return new PatternPreview(sentence, "", List.of());
  }

  private PatternPreview of(PatternRow row) {
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    LocalDate first = row.starts.isAfter(today) ? row.starts : today;
    PatternDates known = dates.read();
    List<LocalDate> year = known.between(row, first, first.plusYears(1).minusDays(1));
    LiturgicalCalendar calendar = known.calendars().get(row.churchId);
    Locale locale = Speech.localeOr(cluster.cluster().language());
    return new PatternPreview(
        PatternWords.of(row, today) + ".",
        say(
            "%s in the twelve months from %s.",
            Speech.sentence(Speech.count(year.size(), "Mass")), Speech.dateAndYear(first)),
        year.stream()
            .limit(SHOWN)
            .map(
                date ->
                    new PatternPreview.Dated(
                        say("%s %d", Speech.day(date), date.getYear()),
                        row.at.toString(),
                        DayWords.celebrated("", calendar.day(date).kept(), locale)))
            .toList());
  }
}
