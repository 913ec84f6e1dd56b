package vestiary.times;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.history.LastChanges;
import vestiary.schedule.ReadUsualTimes;
import vestiary.schedule.UsualTime;
import vestiary.telling.Tongue;
import vestiary.users.PublicAddress;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** Says to whoever publishes what holds, what has changed since, and what begins too soon. */
@ApplicationScoped
@Transactional
class PressSheet {

  /**
   * Parishes usually give four to six weeks' notice of a new schedule (common practice, no source).
   */
  private static final int NOTICE_DAYS = 28;

  private static final int MOST_CHANGES = 12;

  private final GatherTimes gather;
  private final PublishTimes publish;
  private final ReadUsualTimes usual;
  private final LastChanges history;
  private final Clusters clusters;
  private final CurrentCluster current;
  private final PublicAddress here;

  PressSheet(
      GatherTimes gather,
      PublishTimes publish,
      ReadUsualTimes usual,
      LastChanges history,
      Clusters clusters,
      CurrentCluster current,
      PublicAddress here) {
    this.gather = gather;
    this.publish = publish;
    this.usual = usual;
    this.history = history;
    this.clusters = clusters;
    this.current = current;
    this.here = here;
  }

  /** What is said of a press, and what stands in its form. */
  record Note(String done, String problem, Entries typed) {
    static final Note NONE = new Note("", "", Entries.empty());
  }

  TimesView.Press of(Optional<Published> found, Note note) {
    TimesAsked all = new TimesAsked("", "", word(), "");
    List<String> since = found.map(this::since).orElse(List.of());
    return new TimesView.Press(
        note.done(),
        note.problem(),
        found
            .map(one -> standing(one, since))
            .orElse(say("Nothing is published yet: people see no Mass times here.")),
        since.stream().limit(MOST_CHANGES).toList(),
        warning(),
        note.typed().field("weeks"),
        here.of(all.at(TimesSheet.ADDRESS)),
        here.of(all.at("/feeds/times.ics")));
  }

  private String standing(Published one, List<String> since) {
    String until =
        say(
            "Published on %s, %s, by %s, up to %s.",
            Speech.day(one.at().toLocalDate()),
            Speech.clock(one.at()),
            history.makers().apply(one.by()),
            Speech.dateAndYear(one.last()));
    return since.isEmpty()
        ? until + say(" The schedule still reads so.")
        : since.size() == 1
            ? say(
                "%s Since then %s of the schedule changed; people see the old one until it is published again.",
                until, Speech.count(1, "line"))
            : say(
                "%s Since then %s of the schedule changed; people see the old ones until it is published again.",
                until, Speech.count(since.size(), "line"));
  }

  /** What would read otherwise if it were published now, days that are past left aside. */
  private List<String> since(Published one) {
    LocalDate today = publish.today();
    PublicTimes now = gather.of(one.first(), one.last());
    TimesWords words = new TimesWords(Tongue.of(Speech.localeOr(Locale.ENGLISH)));
    List<String> since = new ArrayList<>();
    Set<PublicTimes.Mass> before = new HashSet<>(one.times().masses());
    Set<PublicTimes.Mass> after = new HashSet<>(now.masses());
    now.masses().stream()
        .filter(mass -> !before.contains(mass) && !mass.date().isBefore(today))
        .forEach(mass -> since.add(say("Now: ") + line(mass, words)));
    one.times().masses().stream()
        .filter(mass -> !after.contains(mass) && !mass.date().isBefore(today))
        .forEach(mass -> since.add(say("No more: ") + line(mass, words)));
    return since;
  }

  private static String line(PublicTimes.Mass mass, TimesWords words) {
    return "%s, %s, %s, %s."
        .formatted(
            Speech.day(mass.date()),
            words.clock(mass.time()),
            mass.church().name(),
            words.what(mass));
  }

  private String warning() {
    LocalDate today = publish.today();
    return usual.beginningAfter(today).stream()
        .findFirst()
        .map(UsualTime.Begins::starts)
        .filter(starts -> starts.isBefore(today.plusDays(NOTICE_DAYS)))
        .map(
            starts ->
                say(
                    "A new regular Mass time begins on %s, in %s. Parishes usually give four to six weeks’ notice (common practice, no source).",
                    Speech.day(starts),
                    Speech.count((int) ChronoUnit.DAYS.between(today, starts), "day")))
        .orElse("");
  }

  /** Said in the address only where the server has several clusters. */
  private String word() {
    return clusters.areSeveral() ? clusters.named(current.id()).word() : "";
  }
}
