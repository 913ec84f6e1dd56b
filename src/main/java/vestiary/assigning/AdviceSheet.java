package vestiary.assigning;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import vestiary.allocation.celebrant.PriestId;
import vestiary.cluster.CountBy;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out who could celebrate a Mass, and why the others cannot. */
@ApplicationScoped
class AdviceSheet {

  private final Frames frames;

  AdviceSheet(Frames frames) {
    this.frames = frames;
  }

  AdviceView of(Advice advice, List<Done> done) {
    DatedMass mass = advice.dated();
    String address = "/masses/%s/celebrant".formatted(mass.id().value());
    return new AdviceView(
        frames.of("week", address),
        say("Who celebrates: ") + ProposalSheet.when(mass),
        ProposalSheet.what(mass, advice.scene()),
        lead(advice, mass.findCelebrant()),
        done,
        List.of(
            new Link(say("The Mass"), "/masses/" + mass.id().value()),
            new Link(say("The week’s celebrants"), Dates.week(mass.date()).address()),
            new Link(say("The day"), "/day/" + mass.date())),
        lines(advice),
        effects(advice),
        new WayWords(advice.scene(), advice.mass()).all(advice),
        mass.church().id().value().toString(),
        address);
  }

  /** The same in a few sentences, for the form of the Mass. */
  WhoView who(Advice advice, Optional<Person> typed) {
    List<ProposalView.Reason> reasons =
        reasons(advice, new WhyNotWords(advice.scene(), advice.pace())).stream()
            .filter(one -> typed.filter(p -> p.tightName().equals(one.priest())).isEmpty())
            .toList();
    return new WhoView(lead(advice, typed), reasons, effects(advice));
  }

  /** Whether the one who is named or typed can, and who else could, in a few sentences. */
  static String lead(Advice advice, Optional<Person> named) {
    List<String> able =
        advice.able().stream()
            .filter(one -> named.filter(p -> isOf(one.priest(), p)).isEmpty())
            .map(one -> advice.scene().person(one.priest()).inWords())
            .toList();
    String others =
        able.isEmpty()
            ? say("No other priest of the cluster can take it.")
            : say("%s could take it%s.", Speech.list(able), named.isEmpty() ? "" : say(", too"));
    if (named.isEmpty()) {
      return say("Nobody is named. ")
          + (able.isEmpty()
              ? say("No priest of the cluster can take it as things stand.")
              : others);
    }
    return said(advice, named.get()) + " " + others;
  }

  private static String said(Advice advice, Person named) {
    Optional<Advice.Advised> advised = advice.find(new PriestId(named.id()));
    if (advised.isEmpty()) {
      return say(
          "%s comes from outside, so nothing is known of what else he does.", named.inWords());
    }
    return advised.get().can()
        ? say("%s can take it.", named.inWords())
        : Speech.sentence("%s %s.".formatted(named.inWords(), sentence(advice, advised.get())));
  }

  private static boolean isOf(PriestId priest, Person person) {
    return priest.value().equals(person.id());
  }

  /** The reasons of those who cannot, by surname. */
  static List<ProposalView.Reason> reasons(Advice advice, WhyNotWords words) {
    return advice.priests().stream()
        .filter(one -> !one.can())
        .map(
            one ->
                new ProposalView.Reason(
                    advice.scene().person(one.priest()).tightName(),
                    words.of(one.why().get(0), advice.mass().id())))
        .toList();
  }

  private static List<AdviceView.Line> lines(Advice advice) {
    DatedMass mass = advice.dated();
    List<AdviceView.Line> lines = new ArrayList<>();
    for (Advice.Advised one : advice.priests()) {
      Person person = advice.scene().person(one.priest());
      boolean named = mass.celebrants().contains(person);
      lines.add(
          new AdviceView.Line(
              person.calledName(),
              one.can(),
              named,
              Speech.sentence(sentence(advice, one)) + ".",
              named ? "" : Assigned.value(mass, person.id())));
    }
    lines.sort(Comparator.comparing((AdviceView.Line line) -> !line.can()));
    return lines;
  }

  private static String sentence(Advice advice, Advice.Advised one) {
    WhyNotWords words = new WhyNotWords(advice.scene(), advice.pace());
    if (!one.can()) {
      return words.of(one.why().get(0), advice.mass().id());
    }
    Advice.Count count = one.counted();
    String drive =
        one.drive().isZero() ? "" : say("; %d minutes more to drive", one.drive().toMinutes());
    String language = one.inItsLanguage() ? "" : say("; he does not celebrate in its language");
    return say(
        "can take it: his %s%s%s", words.number(count.number(), count.day()), drive, language);
  }

  /** Where it depends on how days are counted whether a priest may take it. */
  static List<String> effects(Advice advice) {
    CountBy usual = advice.scene().cluster().policies().countBy();
    CountBy other = usual == CountBy.CALENDAR ? CountBy.LITURGICAL : CountBy.CALENDAR;
    return advice.priests().stream()
        .filter(Advice.Advised::dependsOnCounting)
        .map(
            one ->
                say(
                    "%s: %s; %s. The settings say: %s.",
                    advice.scene().person(one.priest()).tightName(),
                    counted(one.counted(), usual),
                    counted(one.otherwise(), other),
                    by(usual)))
        .toList();
  }

  private static String counted(Advice.Count count, CountBy countBy) {
    return say(
        "counted %s it is his %s Mass %s, %s",
        by(countBy),
        Speech.ordinal(count.number()),
        WhyNotWords.on(count.day(), countBy),
        count.tooMany() ? say("one too many") : say("which he may celebrate"));
  }

  private static String by(CountBy countBy) {
    return countBy == CountBy.CALENDAR ? say("by the calendar day") : say("by the liturgical day");
  }
}
