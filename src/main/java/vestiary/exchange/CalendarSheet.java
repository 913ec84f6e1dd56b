package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.web.Choice;
import vestiary.web.Entries;

/** Asks which church and which dates a calendar is brought in for, and reads the answer. */
@ApplicationScoped
class CalendarSheet {

  static final String CHURCH = "church";
  static final String FROM = "from";
  static final String TO = "to";

  private final ReadCluster cluster;
  private final Clock clock;

  CalendarSheet(ReadCluster cluster, Clock clock) {
    this.cluster = cluster;
    this.clock = clock;
  }

  /** What is asked, as it was typed or chosen before; a year from today otherwise. */
  ImportStepView.Calendar of(ImportFileRow file, Entries typed) {
    Entries shown = typed.values().isEmpty() ? entries(file) : typed;
    Stream<Choice.Option> churches =
        cluster.churches().stream()
            .map(church -> Choice.Option.of(church.slug(), church.name() + ", " + church.place()));
    return new ImportStepView.Calendar(
        shown.choice(
            CHURCH,
            Stream.concat(
                Stream.of(Choice.Option.of("", say("As each event says in its place or title"))),
                churches)),
        shown.text(FROM),
        shown.error(FROM),
        shown.text(TO),
        shown.error(TO));
  }

  /**
   * What was chosen.
   *
   * @throws vestiary.problem.Refused if the church is none, or the dates are none, turned round or
   *     more than {@link CalendarSpan#MOST_DAYS} apart
   */
  ChosenColumns read(Entries typed) {
    Asked asked = new Asked();
    String church = asked.text(CHURCH, typed.text(CHURCH));
    if (!church.isEmpty() && cluster.findChurch(church).isEmpty()) {
      asked.fault(CHURCH, say("church \"%s\" is no church of this cluster.", church));
    }
    LocalDate from = asked.date(FROM, typed.text(FROM));
    LocalDate to = asked.date(TO, typed.text(TO));
    asked.refuseIfFaulty();
    if (to.isBefore(from)) {
      asked.fault(TO, say("The last date lies before the first."));
    } else if (from.plusDays(CalendarSpan.MOST_DAYS).isBefore(to)) {
      asked.fault(TO, say("Choose at most two years at a time."));
    }
    asked.refuseIfFaulty();
    return new CalendarSpan(church, from, to).chosen();
  }

  private Entries entries(ImportFileRow file) {
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    Map<String, String> known =
        file.chosen == null
            ? Map.of(FROM, today.toString(), TO, today.plusYears(1).toString())
            : file.chosen.same();
    Map<String, List<String>> values = new HashMap<>();
    known.forEach((field, text) -> values.put(field, List.of(text)));
    return Entries.of(values);
  }
}
