package vestiary.setout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.pool.LaidPiece;
import vestiary.pool.PooledPiece;
import vestiary.vesting.LayingOut;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Wearer;

/** Which piece that is there for a Mass is whose. */
final class Slots {

  /** One kind of piece of one wearer. */
  record Slot(Wearer wearer, PieceKind kind) {
    static Slot of(Need need) {
      return new Slot(need.wearer(), need.kind());
    }
  }

  private final Map<String, PooledPiece> pieces;
  private final List<Need> asked;
  private final Map<Slot, LaidPiece> taken = new LinkedHashMap<>();

  private Slots(Map<String, PooledPiece> pieces, List<Need> asked) {
    this.pieces = pieces;
    this.asked = asked;
  }

  /**
   * What is held for nobody in particular goes to the first who asks for the kind and has none.
   *
   * @param pieces of the pool by code; what is not among them is left out
   * @param asked what the Mass asks of the pool
   */
  static Slots of(
      List<LayingOut.Pile> piles,
      List<LaidPiece> laid,
      Map<String, PooledPiece> pieces,
      List<Need> asked) {
    Slots slots = new Slots(pieces, asked);
    List<LaidPiece> nobodys = new ArrayList<>();
    for (LaidPiece one : laid) {
      if (pieces.containsKey(one.piece())) {
        one.wearers().stream()
            .findFirst()
            .ifPresentOrElse(
                wearer -> slots.taken.put(new Slot(wearer, slots.kind(one)), one),
                () -> nobodys.add(one));
      }
    }
    nobodys.forEach(one -> slots.giveToFirst(one, piles));
    return slots;
  }

  private void giveToFirst(LaidPiece one, List<LayingOut.Pile> piles) {
    piles.stream()
        .map(pile -> new Slot(pile.wearer(), kind(one)))
        .filter(slot -> !taken.containsKey(slot) && findAsked(slot).isPresent())
        .findFirst()
        .ifPresent(slot -> taken.put(slot, one));
  }

  private PieceKind kind(LaidPiece one) {
    return pieces.get(one.piece()).kind();
  }

  boolean isEmpty() {
    return taken.isEmpty();
  }

  /** What lies there for it; empty if nothing does. */
  Optional<LaidPiece> find(Slot slot) {
    return Optional.ofNullable(taken.get(slot));
  }

  /** What the pool is asked for there; empty if it is asked for nothing. */
  Optional<Need> findAsked(Slot slot) {
    return asked.stream().filter(need -> Slot.of(need).equals(slot)).findFirst();
  }

  /** Codes of all that lies there, in order. */
  List<String> codes() {
    return taken.values().stream().map(LaidPiece::piece).distinct().sorted().toList();
  }
}
