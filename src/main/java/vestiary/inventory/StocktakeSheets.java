package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.vesting.ChurchId;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Sets out stocktakes. */
@ApplicationScoped
@Transactional
class StocktakeSheets {

  private final ReadStocktakes stocktakes;
  private final ReadPool pool;
  private final ReadCluster cluster;
  private final WhoCounted who;
  private final Frames frames;
  private final Clock clock;

  StocktakeSheets(
      ReadStocktakes stocktakes,
      ReadPool pool,
      ReadCluster cluster,
      WhoCounted who,
      Frames frames,
      Clock clock) {
    this.stocktakes = stocktakes;
    this.pool = pool;
    this.cluster = cluster;
    this.who = who;
    this.frames = frames;
    this.clock = clock;
  }

  /**
   * What stands over the page.
   *
   * @param ticked code of what was just ticked; empty if nothing was
   * @param problem what kept something from being done; empty if nothing did
   * @param typed code that was typed and not understood; may be empty
   */
  record Note(String ticked, String problem, String typed) {
    static final Note NONE = new Note("", "", "");
  }

  StocktakeView walk(String id, Note note) {
    Stocktake one = stocktakes.get(id);
    Map<String, String> what = what();
    String address = "/stocktakes/" + one.id();
    Map<String, List<StocktakeView.Line>> places =
        one.left().stream()
            .collect(
                Collectors.groupingBy(
                    line -> line.place().isEmpty() ? say("Place not known") : line.place(),
                    LinkedHashMap::new,
                    Collectors.mapping(line -> line(line, what), Collectors.toList())));
    return new StocktakeView(
        frames.of("vestments", address),
        one.church().value().toString(),
        address,
        church(one.church()).name(),
        church(one.church()).slug(),
        said(one, note.ticked()),
        note.problem(),
        one.isClosed() ? "" : note.ticked(),
        lead(one),
        Field.of(note.typed()),
        places.entrySet().stream()
            .map(place -> new StocktakeView.Place(place.getKey(), place.getValue()))
            .toList(),
        one.differences().stream()
            .sorted(Comparator.comparing(line -> !line.isOpen()))
            .map(line -> difference(line, what))
            .toList(),
        one.lines().stream()
            .filter(line -> line.isLookedFor() && !line.isDifference())
            .map(
                line ->
                    new StocktakeView.Line(
                        line.code(), what.getOrDefault(line.code(), ""), line.note()))
            .toList(),
        one.isClosed(),
        !one.isClosed() && one.left().isEmpty() && one.open().isEmpty());
  }

  private String lead(Stocktake one) {
    String by = WhoCounted.name(who.names(), one.closedBy());
    return one.heldOn().stream()
        .map(
            date ->
                say(
                    "Closed on %s%s.",
                    Speech.dateAndYear(date), by.isEmpty() ? "" : say(" by ") + by))
        .findFirst()
        .orElseGet(() -> StocktakeWords.standing(one));
  }

  private static String said(Stocktake one, String ticked) {
    return one.lines().stream()
        .filter(line -> line.code().equals(ticked) && line.isLookedFor())
        .map(line -> "%s: %s.".formatted(line.code(), StocktakeWords.seen(line)))
        .findFirst()
        .orElse(ticked.isEmpty() ? "" : ticked + say(" is noted."));
  }

  private StocktakeView.Difference difference(StocktakeLine line, Map<String, String> what) {
    return new StocktakeView.Difference(
        line.code(),
        what.getOrDefault(line.code(), ""),
        StocktakeWords.seen(line),
        Speech.say(line.settled()),
        line.isOpen()
            ? Settling.of(line).stream()
                .map(way -> new StocktakeView.Way(way.id(), way.words()))
                .toList()
            : List.of());
  }

  private static StocktakeView.Line line(StocktakeLine line, Map<String, String> what) {
    return new StocktakeView.Line(
        line.code(), what.getOrDefault(line.code(), ""), StocktakeWords.seen(line));
  }

  /** "Chasuble, white" by code; what was withdrawn meanwhile has none. */
  private Map<String, String> what() {
    return pool.pieces(clock.instant()).stream()
        .collect(Collectors.toMap(PooledPiece::code, StocktakeSheets::words));
  }

  private static String words(PooledPiece piece) {
    return "%s, %s%s"
        .formatted(
            Speech.sentence(PieceWords.kind(piece.kind())),
            Speech.colour(piece.colour()),
            piece.size().isEmpty() ? "" : ", " + piece.size());
  }

  private Church church(ChurchId id) {
    return cluster.churches().stream()
        .filter(church -> church.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
