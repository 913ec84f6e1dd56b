package vestiary.pool;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import vestiary.calendar.Colour;
import vestiary.cluster.Church;
import vestiary.pool.PoolView.Cell;
import vestiary.pool.PoolView.Row;
import vestiary.pool.PoolView.Tally;
import vestiary.vesting.PieceKind;

/**
 * Counts the chasubles of each church by what colour they are; each is counted once, where it
 * belongs, also while it is in care.
 */
final class PoolTally {

  private final List<PooledPiece> chasubles;
  private final Instant now;

  PoolTally(List<PooledPiece> pieces, Instant now) {
    this.chasubles = pieces.stream().filter(p -> p.kind() == PieceKind.CHASUBLE).toList();
    this.now = now;
  }

  int total() {
    return chasubles.size();
  }

  int away() {
    return (int) chasubles.stream().filter(p -> p.isInCare(now)).count();
  }

  /** One row a church, one column for each colour there is at all. */
  Tally of(List<Church> churches) {
    if (chasubles.isEmpty()) {
      return Tally.NONE;
    }
    List<Colour> colours =
        Arrays.stream(Colour.values())
            .filter(c -> chasubles.stream().anyMatch(p -> p.colour() == c))
            .toList();
    List<Row> rows = churches.stream().map(church -> row(church, colours)).toList();
    List<Integer> sums =
        IntStream.range(0, colours.size())
            .mapToObj(i -> rows.stream().mapToInt(row -> row.cells().get(i).sum()).sum())
            .toList();
    return new Tally(
        colours.stream().map(PieceWords::ribbon).toList(),
        rows,
        sums,
        rows.stream().mapToInt(Row::sum).sum());
  }

  private Row row(Church church, List<Colour> colours) {
    List<Cell> cells = colours.stream().map(colour -> cell(church, colour)).toList();
    return new Row(
        church.name(),
        church.place(),
        "/vestments?church=" + church.slug(),
        cells,
        cells.stream().mapToInt(Cell::sum).sum());
  }

  private Cell cell(Church church, Colour colour) {
    List<PooledPiece> these =
        chasubles.stream()
            .filter(p -> p.home().equals(church.id()) && p.colour() == colour)
            .toList();
    int away = (int) these.stream().filter(p -> p.isInCare(now)).count();
    return new Cell(PieceWords.ribbon(colour), these.size() - away, away);
  }
}
