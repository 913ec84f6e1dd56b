package vestiary.lending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.Cautions;
import vestiary.pool.FindLendable;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PooledPiece;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Sets out the form by which pieces are offered, with all that may leave. */
@ApplicationScoped
class OfferSheet {

  static final List<String> FIELDS =
      List.of("to", "from", "until", "pieces", "ownersAsked", "note");

  private final Frames frames;
  private final FindLendable lendable;
  private final ReadCluster cluster;

  OfferSheet(Frames frames, FindLendable lendable, ReadCluster cluster) {
    this.frames = frames;
    this.lendable = lendable;
    this.cluster = cluster;
  }

  @Transactional
  OfferView view(Entries typed, String problem) {
    List<PooledPiece> pieces = lendable.all();
    List<String> ticked = typed.all("pieces");
    return new OfferView(
        frames.of("vestments", LendingSheets.ADDRESS + "/new"),
        problem,
        typed.field("to"),
        typed.field("from"),
        typed.field("until"),
        cluster.churches().stream()
            .map(church -> store(church, pieces, ticked))
            .filter(store -> !store.things().isEmpty())
            .toList(),
        typed.error("pieces"),
        typed.isTicked("ownersAsked"),
        typed.error("ownersAsked"),
        typed.field("note"),
        Cautions.of(true, false));
  }

  /** Sets are offered whole; a piece of no set by itself. */
  private static OfferView.Store store(
      Church church, List<PooledPiece> pieces, List<String> ticked) {
    Map<String, List<PooledPiece>> things = new LinkedHashMap<>();
    pieces.stream()
        .filter(piece -> piece.home().equals(church.id()))
        .forEach(
            piece ->
                things
                    .computeIfAbsent(
                        piece.set().isEmpty() ? piece.code() : piece.set(),
                        code -> new ArrayList<>())
                    .add(piece));
    List<Choice.Option> options =
        things.entrySet().stream()
            .map(
                thing ->
                    new Choice.Option(
                        thing.getKey(),
                        words(thing.getKey(), thing.getValue()),
                        ticked.contains(thing.getKey())))
            .toList();
    return new OfferView.Store(
        church.name(), options.stream().anyMatch(Choice.Option::chosen), options);
  }

  /** "HT-W1, white chasuble and stole, Trinity whites". */
  private static String words(String code, List<PooledPiece> of) {
    Set<String> kinds = new LinkedHashSet<>();
    of.stream()
        .sorted((a, b) -> a.kind().compareTo(b.kind()))
        .forEach(piece -> kinds.add(Speech.noun(1, piece.kind().id().replace('-', ' '))));
    PooledPiece first = of.get(0);
    String suit = first.suit().isEmpty() ? "" : ", " + first.suit();
    String asking =
        of.stream().anyMatch(piece -> piece.ownerPolicy() == OwnerPolicy.ASKING)
            ? say(", on asking ") + first.owner()
            : "";
    return "%s, %s%s%s"
        .formatted(
            code,
            Speech.tinted(Speech.colour(first.colour()), Speech.list(List.copyOf(kinds))),
            suit,
            asking);
  }
}
