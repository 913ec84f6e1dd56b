package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.CareKind;
import vestiary.pool.EndCare;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Ticks what somebody sees, piece by piece, from as many phones as there are. */
@ApplicationScoped
@Transactional
public class TakeStock {

  private static final int LONGEST = 300;

  private final StocktakeRows stocktakes;
  private final StocktakeLineRows lines;
  private final ReadPool pool;
  private final EndCare care;
  private final CurrentVisitor visitor;
  private final Clock clock;

  TakeStock(
      StocktakeRows stocktakes,
      StocktakeLineRows lines,
      ReadPool pool,
      EndCare care,
      CurrentVisitor visitor,
      Clock clock) {
    this.stocktakes = stocktakes;
    this.lines = lines;
    this.pool = pool;
    this.care = care;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * What somebody saw, as it was typed.
   *
   * @param code of a piece, or of a set for all its pieces; of what is not expected here, too
   * @param finding a {@link Finding}; empty takes back what was said
   * @param note where it was found, or what is wrong with it; may be left out
   */
  public record Seen(String code, String finding, String note) {}

  /**
   * Notes it; the same again changes nothing, so that a form can be sent twice.
   *
   * @return the code of the piece or set
   * @throws Refused if the stocktake is closed, there is no such piece, or a field is unfit
   */
  public String tick(String id, Seen seen) {
    StocktakeRow stocktake = open(id);
    Asked asked = new Asked();
    String code = asked.needed("code", seen.code(), LONGEST);
    Optional<Finding> finding = asked.findTerm(Finding.class, "finding", seen.finding());
    String note = asked.text("note", seen.note(), LONGEST);
    asked.refuseIfFaulty();
    List<PooledPiece> meant = meant(code);
    String word = finding.map(Finding::id).orElse("");
    meant.forEach(piece -> note(stocktake, piece, word, note));
    lines.flush();
    return meant.size() == 1 ? meant.get(0).code() : meant.get(0).set();
  }

  private void note(StocktakeRow stocktake, PooledPiece piece, String word, String note) {
    UUID id = pool.id(piece.code());
    StocktakeLineRow line =
        lines.findLocked(stocktake.id, id).orElseGet(() -> unexpected(stocktake, id, piece));
    if (!line.finding.equals(word) || !line.note.equals(note)) {
      line.finding = word;
      line.note = note;
      line.foundAt = word.isEmpty() ? null : clock.instant();
      line.settled = "";
      if (word.equals(Finding.THERE.id())) {
        endMissing(piece);
      }
    }
    if (!line.expected && word.isEmpty()) {
      lines.delete(line);
    } else {
      lines.persist(line);
    }
  }

  /** The piece of that code, or the pieces of a set that is labelled as one. */
  private List<PooledPiece> meant(String code) {
    List<PooledPiece> all = pool.pieces(clock.instant());
    List<PooledPiece> one = all.stream().filter(p -> p.code().equalsIgnoreCase(code)).toList();
    List<PooledPiece> found =
        one.isEmpty() ? all.stream().filter(p -> p.set().equalsIgnoreCase(code)).toList() : one;
    if (found.isEmpty()) {
      throw new Refused(
          Refusal.Unfit.of(
              "code",
              say(
                  "No piece and no set in use has the code \"%s\". If it belongs here, enter it as a new piece, then tick it.",
                  code)));
    }
    return found;
  }

  private StocktakeLineRow unexpected(StocktakeRow stocktake, UUID piece, PooledPiece found) {
    StocktakeLineRow line = new StocktakeLineRow();
    line.stocktakeId = stocktake.id;
    line.pieceId = piece;
    line.place = found.place();
    line.expected = found.home().value().equals(stocktake.churchId);
    return line;
  }

  /** What was missing and is there is missing no longer. */
  private void endMissing(PooledPiece piece) {
    piece.care().stream()
        .filter(one -> one.kind() == CareKind.MISSING && one.isAt(clock.instant()))
        .forEach(one -> care.end(piece.code(), one.id().toString()));
  }

  /** The one that an address names, under way, in a church of the visitor's. */
  StocktakeRow open(String id) {
    StocktakeRow row = stocktakes.get(id);
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, row.churchId);
    if (row.closedAt != null) {
      throw new Refused(
          new Refusal.Taken(
              "", say("This stocktake is closed; begin another to change something.")));
    }
    return row;
  }
}
