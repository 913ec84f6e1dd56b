package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.web.Choice;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out loans, and what is out. */
@ApplicationScoped
@Transactional
class LoansSheet {

  private static final Choice NO_SIFT = Choice.of(List.of());

  private final ReadSent sent;
  private final SendingWords words;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  LoansSheet(ReadSent sent, SendingWords words, ReadCluster cluster, Frames frames, Clock clock) {
    this.sent = sent;
    this.words = words;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  LoansView loans(boolean open, String parish) {
    LoanSift sift = new LoanSift(open, parish);
    List<LoansView.Line> lines = lines(sent.loans().stream().filter(sift::lets).toList());
    return new LoansView(
        frames.of("vestments", "/loans"),
        say("Loans between parishes"),
        say(
                "Goods belong to the parish that acquired them (CIC 1256), and each parish is a juridic person of its own (CIC 515 §3): what goes from one to another is lent, and stays in this list. ")
            + Speech.sentence(Speech.count(lines.size(), "loan"))
            + ".",
        List.of(new Link(say("What is out"), "/out"), new Link(say("All vestments"), "/vestments")),
        Choice.of(
            List.of(
                new Choice.Option("", say("all"), !open),
                new Choice.Option("open", say("those not back"), open))),
        parishes(parish),
        lines.isEmpty() ? List.of() : List.of(new LoansView.Group("", lines)),
        lines.isEmpty() ? say("No loan fits.") : "");
  }

  LoansView out() {
    List<Sent> open = sent.open();
    Instant now = clock.instant();
    SendingWords.Said said = words.read();
    Map<String, List<Sent>> byPlace =
        open.stream()
            .collect(Collectors.groupingBy(said::place, TreeMap::new, Collectors.toList()));
    List<LoansView.Line> overdue = lines(open.stream().filter(one -> one.isOverdue(now)).toList());
    return new LoansView(
        frames.of("vestments", "/out"),
        say("What is out"),
        lead(lines(open).size(), overdue.size()),
        List.of(
            new Link(say("Scan a label"), "/s"),
            new Link(say("Loans"), "/loans"),
            new Link(say("All vestments"), "/vestments")),
        NO_SIFT,
        NO_SIFT,
        Stream.concat(
                overdue.isEmpty()
                    ? Stream.of()
                    : Stream.of(new LoansView.Group(say("Overdue, to be asked for"), overdue)),
                byPlace.entrySet().stream()
                    .map(
                        place ->
                            new LoansView.Group(
                                Speech.sentence(place.getKey()),
                                lines(
                                    place.getValue().stream()
                                        .filter(one -> !one.isOverdue(now))
                                        .toList())))
                    .filter(group -> !group.lines().isEmpty()))
            .toList(),
        open.isEmpty() ? say("Everything is in.") : "");
  }

  private static String lead(int out, int overdue) {
    if (out == 0) {
      return say("Nothing is out.");
    }
    String all = say("%s %s out", count(out), out == 1 ? say("is") : say("are"));
    return overdue == 0
        ? all + say(", and nothing is overdue.")
        : Speech.sayOf(
            overdue,
            "%s; %s overdue and cannot be planned until somebody says that it is back.",
            all,
            overdue == 1 ? say("one is") : say("%s are", Speech.count(overdue)));
  }

  private static String count(int number) {
    String words = number == 1 ? say("set or piece") : say("sets or pieces");
    return Speech.sentence(Speech.count(number, "set or piece", words));
  }

  private List<LoansView.Line> lines(List<Sent> found) {
    return new SentLines(words.read(), clock.instant()).of(found);
  }

  private Choice parishes(String chosen) {
    return Choice.of(
        Stream.concat(
                Stream.of(new Choice.Option("", say("all parishes"), chosen.isBlank())),
                cluster.churches().stream()
                    .map(Church::parish)
                    .distinct()
                    .sorted()
                    .map(
                        name ->
                            new Choice.Option(name, name, name.equalsIgnoreCase(chosen.strip()))))
            .toList());
  }
}
