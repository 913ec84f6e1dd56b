package vestiary.inventory;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import vestiary.calendar.Term;
import vestiary.pool.PooledPiece;
import vestiary.web.Cell;

/**
 * An inventory as a table with the columns of the list of pieces, so that it can be brought in
 * again; what things are worth follows where it may be seen. Source: RFC 4180.
 *
 * @param worth by code; none where values are not shown
 */
record InventoryTable(
    ReadInventories.Inventory inventory, boolean valued, Map<String, Valuation> worth) {

  static final List<String> COLUMNS =
      List.of(
          "code",
          "kind",
          "colours",
          "shade",
          "grade",
          "size",
          "set",
          "suit",
          "home",
          "owner",
          "ownerPolicy",
          "condition",
          "place",
          "staysHome",
          "form",
          "description",
          "provenance",
          "acquired",
          "precious",
          "keeper");

  /** The whole file, the header line first. */
  String text() {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(with(COLUMNS, "value", "currency"));
      for (PooledPiece piece : inventory.pieces()) {
        Valuation value = worth.get(piece.code());
        printer.printRecord(
            with(
                cells(piece),
                value == null ? "" : value.amount().toPlainString(),
                value == null ? "" : value.currency()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private List<String> with(List<String> cells, String... values) {
    List<String> all = new ArrayList<>(cells);
    if (valued) {
      all.addAll(List.of(values));
    }
    return all.stream().map(Cell::harmless).toList();
  }

  private List<String> cells(PooledPiece piece) {
    return List.of(
        piece.code(),
        piece.kind().id(),
        piece.colours().stream().map(Term::id).collect(Collectors.joining("|")),
        piece.shade(),
        piece.grade(),
        piece.size(),
        piece.set(),
        piece.suit(),
        inventory.church().slug(),
        piece.owner(),
        piece.ownerPolicy().id(),
        piece.condition(),
        piece.place(),
        String.valueOf(piece.staysHome()),
        piece.form(),
        piece.particulars().description(),
        piece.particulars().provenance(),
        piece.particulars().acquired(),
        String.valueOf(piece.particulars().precious()),
        piece.particulars().keeper());
  }
}
