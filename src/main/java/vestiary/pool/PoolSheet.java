package vestiary.pool;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.pool.PoolView.Group;
import vestiary.pool.PoolView.Store;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the pool: its sums, and then piece by piece what each church keeps. */
final class PoolSheet {

  private final List<PooledPiece> pieces;
  private final Map<String, String> setNames;
  private final Map<String, String> out;
  private final PoolSift sift;
  private final Instant now;
  private final ZoneId zone;

  /**
   * A sheet of all pieces.
   *
   * @param pieces by code
   * @param setNames by the codes of those sets that have a name
   * @param out where what is out is, by the codes of those pieces
   */
  PoolSheet(
      List<PooledPiece> pieces,
      Map<String, String> setNames,
      Map<String, String> out,
      PoolSift sift,
      Instant now,
      ZoneId zone) {
    this.pieces = List.copyOf(pieces);
    this.setNames = Map.copyOf(setNames);
    this.out = Map.copyOf(out);
    this.sift = sift;
    this.now = now;
    this.zone = zone;
  }

  /**
   * @param done what was just done; empty else
   */
  PoolView view(Frame frame, String done) {
    PoolTally tally = new PoolTally(pieces, now);
    List<Store> stores =
        sift.chosenChurches().stream()
            .map(this::store)
            .filter(store -> !store.groups().isEmpty())
            .toList();
    return new PoolView(
        frame,
        done,
        lead(tally),
        new Link(say("Add a piece"), "/vestments/new"),
        sift.churchChoice(),
        sift.colourChoice(),
        sift.kindChoice(),
        tally.of(sift.churches()),
        stores,
        stores.isEmpty() ? nothing() : "");
  }

  private String lead(PoolTally tally) {
    if (pieces.isEmpty()) {
      return say("Enter the first piece, or import a list.");
    }
    int others = pieces.size() - tally.total();
    String all =
        say(
            "%s%s in %s",
            Speech.count(tally.total(), "chasuble"),
            others == 0 ? "" : say(" and ") + Speech.count(others, "other piece"),
            Speech.count(sift.churches().size(), "church"));
    String away =
        tally.away() == 0
            ? "."
            : say(
                tally.away() == 1 ? word("; %s is away.") : word("; %s are away."),
                Speech.count(tally.away(), "chasuble"));
    return Speech.sentence(all + away);
  }

  private String nothing() {
    return sift.isOpen() || pieces.isEmpty()
        ? say("No vestments are entered yet.")
        : say("No piece fits what you chose above; choose more widely.");
  }

  private Store store(Church church) {
    Map<String, List<PooledPiece>> bySet = new LinkedHashMap<>();
    List<PooledPiece> single = new ArrayList<>();
    pieces.stream()
        .filter(p -> p.home().equals(church.id()) && sift.lets(p))
        .forEach(p -> (p.set().isEmpty() ? single : of(p.set(), bySet)).add(p));
    List<Group> groups = new ArrayList<>();
    bySet.forEach((set, within) -> groups.add(group(set, within)));
    if (!single.isEmpty()) {
      groups.add(new Group("", say("Pieces of no set"), "", pieces(single)));
    }
    return new Store(church.name(), church.place(), count(bySet.size(), single.size()), groups);
  }

  private static List<PooledPiece> of(String set, Map<String, List<PooledPiece>> bySet) {
    return bySet.computeIfAbsent(set, s -> new ArrayList<>());
  }

  private static String count(int sets, int single) {
    if (sets == 0) {
      return Speech.count(single, "piece");
    }
    return Speech.count(sets, "set")
        + (single == 0 ? "" : say(" and ") + Speech.count(single, "piece") + say(" besides"));
  }

  private Group group(String set, List<PooledPiece> within) {
    return new Group(
        set, setNames.getOrDefault(set, ""), matches(set, within.get(0).suit()), pieces(within));
  }

  private String matches(String set, String suit) {
    List<String> others =
        suit.isEmpty()
            ? List.of()
            : pieces.stream()
                .filter(p -> p.suit().equals(suit) && !p.set().equals(set))
                .map(PooledPiece::set)
                .distinct()
                .sorted()
                .toList();
    return others.isEmpty() ? suit : say("%s: matches %s", suit, Speech.list(others));
  }

  private List<PoolView.Piece> pieces(List<PooledPiece> within) {
    return within.stream().map(this::piece).toList();
  }

  private PoolView.Piece piece(PooledPiece piece) {
    return new PoolView.Piece(
        piece.code(),
        "/vestments/" + piece.code(),
        PieceWords.kind(piece.kind()),
        PieceWords.ribbon(piece.colour()),
        PieceWords.also(piece),
        PieceWords.details(piece),
        PieceWords.staysHome(piece),
        away(piece));
  }

  private String away(PooledPiece piece) {
    return Stream.of(out.getOrDefault(piece.code(), ""), PieceWords.care(piece, now, zone))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(". "));
  }
}
