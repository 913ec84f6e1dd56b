package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.PiecePhotos;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.vesting.ChurchId;
import vestiary.web.ClashMark;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Sets out the inventories. */
@ApplicationScoped
@Transactional
class InventorySheets {

  private final ReadInventories inventories;
  private final ReadStocktakes stocktakes;
  private final ValuePiece values;
  private final PiecePhotos photos;
  private final CurrentVisitor visitor;
  private final Frames frames;

  InventorySheets(
      ReadInventories inventories,
      ReadStocktakes stocktakes,
      ValuePiece values,
      PiecePhotos photos,
      CurrentVisitor visitor,
      Frames frames) {
    this.inventories = inventories;
    this.stocktakes = stocktakes;
    this.values = values;
    this.photos = photos;
    this.visitor = visitor;
    this.frames = frames;
  }

  InventoryListView list(String done) {
    Map<ChurchId, UUID> open =
        stocktakes.all().stream()
            .filter(one -> !one.isClosed())
            .collect(Collectors.toMap(Stocktake::church, Stocktake::id));
    List<ReadInventories.Inventory> all = inventories.all();
    long due = all.stream().filter(one -> one.age() != InventoryAge.CURRENT).count();
    String lead =
        due == 0
            ? say("Every church has an inventory of the last twelve months.")
            : say(
                "%s %s an inventory that is due.",
                Speech.sentence(Speech.count((int) due, "church")),
                due == 1 ? say("has") : say("have"));
    return new InventoryListView(
        frames.of("vestments", "/inventories"),
        lead,
        done,
        all.stream().map(one -> row(one, open)).toList());
  }

  private static InventoryListView.Row row(
      ReadInventories.Inventory one, Map<ChurchId, UUID> open) {
    boolean hard = one.age() == InventoryAge.OLD || one.age() == InventoryAge.NEVER;
    UUID taking = open.get(one.church().id());
    return new InventoryListView.Row(
        one.church().id().value().toString(),
        one.church().slug(),
        one.church().name(),
        hard ? List.of(new ClashMark("know", say("Worth knowing"))) : List.of(),
        InventoryWords.age(one),
        Speech.count(one.pieces().size(), "piece"),
        taking == null ? "" : "/stocktakes/" + taking);
  }

  InventoryView sheet(String slug, Field date) {
    ReadInventories.Inventory one = inventories.get(slug);
    boolean valued = visitor.visitor().may(Action.SEE_VALUES);
    Told told =
        new Told(
            valued ? values.newest() : Map.of(),
            photos.eachOf(one.pieces().stream().map(PooledPiece::code).toList()));
    return new InventoryView(
        frames.of("vestments", "/inventories/" + one.church().slug()),
        one.church().id().value().toString(),
        one.church().slug(),
        one.church().name(),
        one.church().parish(),
        InventoryWords.age(one),
        Speech.sentence(Speech.count(one.pieces().size(), "piece")) + say(" in use."),
        valued,
        Stream.of(
                kind(say("Precious for their art or history"), true, one, told),
                kind(say("Other things"), false, one, told))
            .filter(kind -> !kind.things().isEmpty())
            .toList(),
        one.withdrawn().stream().map(InventorySheets::withdrawn).toList(),
        date);
  }

  /** What is known beside the pieces themselves, by their codes. */
  private record Told(Map<String, Valuation> worth, Map<String, PiecePhotos.Shown> pictures) {}

  private static InventoryView.Kind kind(
      String name, boolean precious, ReadInventories.Inventory one, Told told) {
    return new InventoryView.Kind(
        name,
        one.pieces().stream()
            .filter(piece -> piece.particulars().precious() == precious)
            .map(piece -> thing(piece, told))
            .toList());
  }

  private static InventoryView.Thing thing(PooledPiece piece, Told told) {
    String colour = Speech.colour(piece.colour());
    Valuation value = told.worth().get(piece.code());
    PiecePhotos.Shown picture = told.pictures().get(piece.code());
    return new InventoryView.Thing(
        piece.code(),
        "%s, %s".formatted(Speech.sentence(PieceWords.kind(piece.kind())), colour),
        joined(
            piece.particulars().description(),
            piece.particulars().provenance(),
            piece.particulars().acquired()),
        joined(
            piece.place(),
            piece.particulars().keeper().isEmpty()
                ? ""
                : say("kept by ") + piece.particulars().keeper()),
        piece.owner(),
        piece.condition(),
        value == null ? "" : value.words(),
        picture == null ? "" : picture.small());
  }

  private static String withdrawn(PooledPiece piece) {
    return "%s %s: %s"
        .formatted(
            Speech.sentence(PieceWords.kind(piece.kind())),
            piece.code(),
            PieceWords.withdrawn(piece.withdrawn().get(0)));
  }

  private static String joined(String... parts) {
    return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining("; "));
  }
}
