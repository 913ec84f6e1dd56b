package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.MassKind;
import vestiary.calendar.Season;
import vestiary.cluster.Church;
import vestiary.cluster.Closings;
import vestiary.cluster.ReadCluster;
import vestiary.pattern.SchoolTime;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.web.Choice;
import vestiary.web.Choice.Option;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Fills the form of a recurring Mass time. */
@ApplicationScoped
class PatternFormView {

  private final ReadCluster cluster;
  private final FindPeople people;
  private final ShowPreview preview;
  private final Frames frames;
  private final Closings closings;
  private final Clock clock;

  PatternFormView(
      ReadCluster cluster,
      FindPeople people,
      ShowPreview preview,
      Frames frames,
      Closings closings,
      Clock clock) {
    this.closings = closings;
    this.cluster = cluster;
    this.people = people;
    this.preview = preview;
    this.frames = frames;
    this.clock = clock;
  }

  /** A new one, with nothing typed yet but what the address gives. */
  Entries fresh(String church) {
    return PatternEntries.fresh(today().toString()).with("church", church);
  }

  PatternForm fresh(Entries input, String problem) {
    return form(input, say("A new Mass time"), "/patterns", "", problem, "");
  }

  Entries stored(PatternRow row) {
    return PatternEntries.from(row, church(row).slug(), celebrant(row));
  }

  PatternForm of(PatternRow row, Entries input, String problem, String outOfStep) {
    String title = church(row).name() + ". " + PatternWords.of(row, today());
    return form(input, title, "/patterns/" + row.id, row.id.toString(), problem, outOfStep);
  }

  private PatternForm form(
      Entries input, String title, String action, String id, String problem, String outOfStep) {
    return new PatternForm(
        frames.of("settings", action),
        title,
        action,
        id.isEmpty() ? "" : action + "/removal",
        id.isEmpty() ? "" : "/history/" + id,
        problem,
        outOfStep,
        input.choice("church", churches(input.text("church"))),
        input.choice("days", days()),
        any(
            input,
            "weekday",
            RuleWords.WEEK.stream().map(d -> Option.of(d, Speech.sentence(RuleWords.weekday(d))))),
        any(input, "turn", turns()),
        input.isTicked("everyOther"),
        input.field("rrule"),
        input.field("starts"),
        input.field("until"),
        input.field("time"),
        input.field("minutes"),
        limits(input),
        input.field("except"),
        input.choice("mass", masses()),
        input.field("celebrant"),
        people.all().stream().filter(p -> p.role().canCelebrate()).map(Person::name).toList(),
        input.field("concelebrants"),
        input.field("deacons"),
        input.field("note"),
        MassLanguage.choice(input, cluster.cluster()),
        input.field("from"),
        input.isTicked("takeAlong"),
        preview.of(input),
        new Link(say("School terms"), "/patterns/terms"),
        input.text("version"));
  }

  private PatternForm.Limits limits(Entries input) {
    return new PatternForm.Limits(
        input.isTicked("notInTriduum"),
        input.isTicked("notOnHolyDays"),
        any(
            input,
            "seasons",
            Stream.of(Season.values())
                .filter(season -> season != Season.TRIDUUM)
                .map(s -> Option.of(s.id(), PatternWords.of(s)))),
        any(
            input,
            "months",
            IntStream.rangeClosed(1, 12)
                .mapToObj(m -> Option.of(String.valueOf(m), Speech.sentence(RuleWords.month(m))))),
        input.choice(
            "school",
            Stream.of(SchoolTime.values())
                .map(s -> Option.of(s.id(), Speech.sentence(PatternWords.of(s))))));
  }

  private Stream<Option> churches(String chosen) {
    return closings.open(cluster.churches(), today(), chosen).stream()
        .map(
            c -> Option.of(c.slug(), c.place().isEmpty() ? c.name() : c.name() + ", " + c.place()));
  }

  private static Stream<Option> days() {
    return Stream.of(
            Stream.of(Option.of(PatternEntries.WEEKDAYS, say("Days of the week"))),
            PatternEntries.liturgical().stream()
                .map(d -> Option.of(d.id(), Speech.sentence(PatternWords.of(d)))),
            Stream.of(Option.of(PatternEntries.RULE, say("By rule (RFC 5545)"))))
        .flatMap(one -> one);
  }

  private static Stream<Option> turns() {
    return Stream.of(
        Option.of("1", say("First")),
        Option.of("2", say("Second")),
        Option.of("3", say("Third")),
        Option.of("4", say("Fourth")),
        Option.of("5", say("Fifth")),
        Option.of("-1", say("Last")));
  }

  private static Stream<Option> masses() {
    return Stream.concat(
        Stream.of(Option.of("", say("As the calendar says"))),
        Stream.of(MassKind.values()).map(k -> Option.of(k.id(), MassKindWords.of(k))));
  }

  private static Choice any(Entries input, String field, Stream<Option> options) {
    List<String> ticked = input.all(field);
    return new Choice(
        options.map(o -> new Option(o.value(), o.text(), ticked.contains(o.value()))).toList(),
        input.error(field));
  }

  private Church church(PatternRow row) {
    return cluster.churches().stream()
        .filter(c -> c.id().value().equals(row.churchId))
        .findFirst()
        .orElseThrow();
  }

  private String celebrant(PatternRow row) {
    return row.celebrantId == null ? "" : people.find(row.celebrantId).map(Person::name).orElse("");
  }

  private LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }
}
