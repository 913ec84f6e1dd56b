package vestiary.label;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.pool.Cautions;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.sending.Item;
import vestiary.sending.ReadNextUses;
import vestiary.sending.SendOut;
import vestiary.sending.SendingWords;
import vestiary.sending.TakeIn;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Grade;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Sets out the two forms by which things go and come, with what was typed in them. */
@ApplicationScoped
@Transactional
class SendingForms {

  private static final Duration AHEAD = Duration.ofDays(31);

  private static final List<String> OUT_FIELDS =
      List.of(
          "church",
          "whom",
          "mass",
          "due",
          "carrier",
          "signer",
          "condition",
          "without",
          "ownersAsked");

  private static final List<String> BACK_FIELDS =
      List.of("church", "taker", "condition", "without");

  private final ReadCluster cluster;
  private final ReadNextUses uses;
  private final FindPeople people;
  private final Here here;
  private final Frames frames;

  SendingForms(
      ReadCluster cluster, ReadNextUses uses, FindPeople people, Here here, Frames frames) {
    this.cluster = cluster;
    this.uses = uses;
    this.people = people;
    this.here = here;
    this.frames = frames;
  }

  static SendOut.Request outRequest(Entries typed) {
    return new SendOut.Request(
        typed.text("church"),
        typed.text("whom"),
        typed.text("due"),
        typed.text("mass"),
        typed.text("carrier"),
        typed.text("signer"),
        typed.text("condition"),
        typed.all("without"),
        typed.isTicked("ownersAsked"));
  }

  static TakeIn.Request backRequest(Entries typed) {
    return new TakeIn.Request(
        typed.text("church"), typed.text("taker"), typed.text("condition"), typed.all("without"));
  }

  OutView outAgain(Item item, Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    return out(item, marked, FormAnswer.problem(refusal, marked, shown(item, OUT_FIELDS)));
  }

  OutView out(Item item, Entries typed, String problem) {
    List<Choice.Option> masses =
        uses.of(item.codes(), AHEAD).stream()
            .map(
                use ->
                    Choice.Option.of(
                        use.mass().id().value().toString(), SendingWords.Said.mass(use.mass())))
            .toList();
    return new OutView(
        frames.of("vestments", "/s/%s/out".formatted(item.code())),
        item.code(),
        say("Where does %s go?", item.code()),
        problem,
        typed.choice("church", churches(say("none of these"))),
        typed.field("whom"),
        masses.isEmpty()
            ? Choice.of(List.of())
            : typed.choice(
                "mass",
                Stream.concat(
                    Stream.of(Choice.Option.of("", say("as the church above says"))),
                    masses.stream())),
        typed.field("due"),
        typed.field("carrier"),
        typed.field("signer"),
        typed.field("condition"),
        without(item, typed),
        asking(item),
        typed.error("ownersAsked"),
        typed.isTicked("ownersAsked"),
        names(),
        cautions(item));
  }

  BackView backAgain(Item item, Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    return back(item, marked, FormAnswer.problem(refusal, marked, shown(item, BACK_FIELDS)));
  }

  BackView back(Item item, Entries typed, String problem) {
    ChurchId church = here.church().orElse(item.home());
    Entries filled = typed.all("church").isEmpty() ? typed.with("church", slug(church)) : typed;
    return new BackView(
        frames.of("vestments", "/s/%s/back".formatted(item.code())),
        item.code(),
        say("Where is %s now?", item.code()),
        problem,
        filled.choice(
            "church", cluster.churches().stream().map(c -> Choice.Option.of(c.slug(), c.name()))),
        filled.field("taker"),
        filled.field("condition"),
        without(item, filled),
        names());
  }

  private String slug(ChurchId id) {
    return cluster.churches().stream()
        .filter(church -> church.id().equals(id))
        .map(Church::slug)
        .findFirst()
        .orElse("");
  }

  private Stream<Choice.Option> churches(String none) {
    return Stream.concat(
        Stream.of(Choice.Option.of("", none)),
        cluster.churches().stream().map(c -> Choice.Option.of(c.slug(), c.name())));
  }

  /** A single piece has nothing to go without, so that its form cannot say what is wrong there. */
  private static List<String> shown(Item item, List<String> fields) {
    return fields.stream().filter(field -> !field.equals("without") || isOfSeveral(item)).toList();
  }

  private static boolean isOfSeveral(Item item) {
    return item.pieces().size() > 1;
  }

  private static Choice without(Item item, Entries typed) {
    if (!isOfSeveral(item)) {
      return Choice.of(List.of());
    }
    List<String> ticked = typed.all("without");
    return new Choice(
        item.pieces().stream()
            .map(
                piece ->
                    new Choice.Option(
                        piece.code(),
                        "%s, %s".formatted(piece.code(), PieceWords.kind(piece.kind())),
                        ticked.contains(piece.code())))
            .toList(),
        typed.error("without"));
  }

  private static String asking(Item item) {
    return Speech.list(
        item.pieces().stream()
            .filter(piece -> piece.ownerPolicy() == OwnerPolicy.ASKING)
            .map(PooledPiece::owner)
            .distinct()
            .toList());
  }

  private List<String> names() {
    return people.all().stream().map(Person::calledName).toList();
  }

  private static List<String> cautions(Item item) {
    List<String> said = new ArrayList<>();
    if (item.pieces().stream().anyMatch(piece -> piece.grade().equals(Grade.SOLEMN.id()))) {
      said.add(
          say(
              "Ask whoever keeps the insurance before precious pieces leave the building: cover may stop at the door."));
    }
    said.add(say("Count the pieces out, and count them in."));
    said.addAll(Cautions.of(item.pieces()));
    return said;
  }
}
