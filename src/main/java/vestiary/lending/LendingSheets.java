package vestiary.lending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.lending.ReadLendings.Lending;
import vestiary.pool.Cautions;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** Sets out what is lent and borrowed, all of it and one by one. */
@ApplicationScoped
class LendingSheets {

  static final String ADDRESS = "/lendings";

  private final Frames frames;
  private final ReadLendings lendings;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;

  LendingSheets(Frames frames, ReadLendings lendings, ReadCluster cluster, CurrentVisitor visitor) {
    this.frames = frames;
    this.lendings = lendings;
    this.cluster = cluster;
    this.visitor = visitor;
  }

  @Transactional
  LendingsView all() {
    List<Lending> all = lendings.all();
    LendingWords words = new LendingWords(cluster.cluster().zone());
    Map<String, Predicate<Lending>> kinds = new LinkedHashMap<>();
    kinds.put(say("Offered to you"), l -> l.state() == LendingState.OFFERED && !l.ours());
    kinds.put(say("Offered by you"), l -> l.state() == LendingState.OFFERED && l.ours());
    kinds.put(say("Borrowed"), l -> l.state() == LendingState.ACCEPTED && !l.ours());
    kinds.put(say("Lent%s", ""), l -> l.state() == LendingState.ACCEPTED && l.ours());
    kinds.put(say("Over"), l -> !l.state().isOpen());
    List<LendingsView.Part> parts = new ArrayList<>();
    kinds.forEach(
        (title, kind) ->
            parts.add(
                new LendingsView.Part(
                    title, all.stream().filter(kind).map(l -> row(l, words)).toList())));
    return new LendingsView(
        frames.of("vestments", ADDRESS),
        lead(parts.get(0).rows().size()),
        parts.stream().filter(part -> !part.rows().isEmpty()).toList(),
        visitor.visitor().may(Action.LEND));
  }

  /**
   * One of them.
   *
   * @param typed what stands in its forms
   * @param problem what kept the last press from being done; may be empty
   */
  @Transactional
  LendingView one(String id, Entries typed, String problem) {
    Lending one = lendings.get(id);
    LendingWords words = new LendingWords(cluster.cluster().zone());
    String address = ADDRESS + "/" + one.id();
    return new LendingView(
        frames.of("vestments", address),
        words.over(one),
        LendingWords.what(one),
        List.of(new Link(say("All lent and borrowed"), ADDRESS)),
        problem,
        words.state(one),
        facts(one, words),
        one.pieces().stream().map(LendingSheets::piece).toList(),
        one.state().isOpen() ? cautions(one) : List.of(),
        words.told(one),
        doing(one, address, typed));
  }

  private static String lead(int offers) {
    return offers == 0
        ? say("Vestments that go to another cluster of this server for a time, or come from one.")
        : Speech.sentence(
            say(
                "%s %s for your answer.",
                Speech.count(offers, "offer"), offers == 1 ? say("waits") : say("wait")));
  }

  private static LendingsView.Row row(Lending one, LendingWords words) {
    return new LendingsView.Row(
        ADDRESS + "/" + one.id(),
        LendingWords.what(one),
        one.ours()
            ? say("to %1$s, %2$s", one.other().name(), words.days(one))
            : say("from %1$s, %2$s", one.other().name(), words.days(one)),
        words.state(one));
  }

  private static List<LendingView.Fact> facts(Lending one, LendingWords words) {
    List<LendingView.Fact> facts = new ArrayList<>();
    facts.add(new LendingView.Fact(say("Days, both included"), words.days(one)));
    facts.add(
        new LendingView.Fact(
            say("How much"), Speech.sentence(Speech.count(one.pieces().size(), "piece"))));
    one.church().forEach(c -> facts.add(new LendingView.Fact(say("They lie at"), c.name())));
    return facts;
  }

  private static LendingView.Piece piece(LentPiece one) {
    Colour colour = Term.find(Colour.class, one.colours().get(0)).orElseThrow();
    String size = one.size().matches("\\d+") ? one.size() + " cm" : one.size();
    return new LendingView.Piece(
        one.code(),
        one.set(),
        Speech.noun(1, one.kind().replace('-', ' ')),
        new Ribbon(colour, Speech.colour(colour)),
        one.owner(),
        String.join(
            ", ", Stream.of(size, one.condition()).filter(said -> !said.isEmpty()).toList()));
  }

  private static List<String> cautions(Lending one) {
    return Cautions.of(
        one.pieces().stream().anyMatch(p -> p.grade().equals("solemn")),
        one.pieces().stream().anyMatch(p -> p.kind().equals("mitre")));
  }

  private LendingView.Doing doing(Lending one, String address, Entries typed) {
    boolean may = visitor.visitor().may(Action.LEND);
    boolean offered = may && one.state() == LendingState.OFFERED;
    return new LendingView.Doing(
        address,
        offered && !one.ours(),
        offered && one.ours(),
        may && one.state() == LendingState.ACCEPTED,
        typed.choice("church", cluster.churches().stream().map(LendingSheets::option)),
        typed.field("answer"),
        typed.field("ending"));
  }

  private static Choice.Option option(Church church) {
    return Choice.Option.of(church.slug(), church.name());
  }
}
