package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.MassKind;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Lists the regular Mass times in plain words. */
@ApplicationScoped
class PatternsSheet {

  private final PatternRows patterns;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final Frames frames;
  private final Clock clock;

  PatternsSheet(
      PatternRows patterns, ReadCluster cluster, FindPeople people, Frames frames, Clock clock) {
    this.patterns = patterns;
    this.cluster = cluster;
    this.people = people;
    this.frames = frames;
    this.clock = clock;
  }

  PatternsView view(String done) {
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    Map<UUID, Person> known = people.byId();
    List<PatternRow> all =
        patterns.listAll().stream()
            .sorted(
                Comparator.comparing(PatternsSheet::order)
                    .thenComparing(row -> row.at)
                    // Two at one hour stand as they were entered.
                    .thenComparing(row -> row.id))
            .toList();
    List<PatternRow> inForce = all.stream().filter(row -> !isOver(row, today)).toList();
    return new PatternsView(
        frames.of("settings", "/patterns"),
        done,
        Speech.sentence(Speech.count(inForce.size(), "regular Mass time")) + ".",
        cluster.churches().stream().map(c -> ofChurch(c, inForce, known, today)).toList(),
        all.stream().filter(row -> isOver(row, today)).map(row -> row(row, known, today)).toList());
  }

  private static PatternsView.OfChurch ofChurch(
      Church church, List<PatternRow> rows, Map<UUID, Person> known, LocalDate today) {
    return new PatternsView.OfChurch(
        church.name(),
        church.place(),
        rows.stream()
            .filter(row -> row.churchId.equals(church.id().value()))
            .map(row -> row(row, known, today))
            .toList(),
        new Link(say("Add a Mass time here"), "/patterns/new?church=" + church.slug()));
  }

  private static PatternsView.Row row(PatternRow row, Map<UUID, Person> known, LocalDate today) {
    String about =
        Stream.of(
                row.celebrantId == null ? "" : known.get(row.celebrantId).calledName(),
                Term.find(MassKind.class, row.kind).map(MassKindWords::of).orElse(""),
                row.note)
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(" · "));
    return new PatternsView.Row(
        new Link(PatternWords.of(row, today), "/patterns/" + row.id), about);
  }

  private static boolean isOver(PatternRow row, LocalDate today) {
    return row.ends != null && row.ends.isBefore(today);
  }

  /** As a week is read: Sunday's Masses last, what the calendar says after them. */
  private static int order(PatternRow row) {
    return RuleWords.find(row.rrule)
        .filter(words -> !words.weekdays().isEmpty())
        .map(
            words ->
                RuleWords.WEEK.indexOf(words.weekdays().get(0))
                    + (words.turns().isEmpty() ? 0 : RuleWords.WEEK.size()))
        .orElse(3 * RuleWords.WEEK.size());
  }
}
