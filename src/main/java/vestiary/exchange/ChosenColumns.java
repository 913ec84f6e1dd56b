package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.problem.DayOrder;
import vestiary.web.Cell;

/**
 * What somebody said the columns of a file hold.
 *
 * @param places in the file, from 0, by the names of our columns
 * @param same what holds on every line where the file has no such column, or nothing in it, by the
 *     names of our columns
 * @param order how days are written; any where none is written so that it matters
 */
public record ChosenColumns(Map<String, Integer> places, Map<String, String> same, String order) {

  public ChosenColumns {
    places = Map.copyOf(places);
    same = Map.copyOf(same);
  }

  /** The file as a list of ours. */
  CsvTable table(ImportWhat what, RawTable file, TidyCells tidy) {
    List<BadLine> missing =
        what.columns().stream()
            .filter(Column::required)
            .filter(c -> !places.containsKey(c.name()) && !same.containsKey(c.name()))
            .map(
                c ->
                    new BadLine(
                        1,
                        c.name(),
                        say("Say which column holds this, or what holds on every line.")))
            .toList();
    if (!missing.isEmpty()) {
      return new CsvTable(List.of(), missing, List.of());
    }
    DayOrder days =
        DayOrder.MONTH_DAY_YEAR.id().equals(order)
            ? DayOrder.MONTH_DAY_YEAR
            : DayOrder.DAY_MONTH_YEAR;
    List<CsvLine> lines = new ArrayList<>();
    for (RawTable.Line line : file.lines()) {
      Map<String, String> cells = new HashMap<>();
      same.forEach((column, text) -> cells.put(column, tidy.tidy(what, column, text, days)));
      places.forEach(
          (column, place) -> {
            String cell = line.cell(place);
            if (!cell.isEmpty() || !same.containsKey(column)) {
              cells.put(column, tidy.tidy(what, column, Cell.asWritten(cell), days));
            }
          });
      lines.add(new CsvLine(line.number(), cells));
    }
    return new CsvTable(lines, List.of(), unused(file));
  }

  private List<String> unused(RawTable file) {
    return IntStream.range(0, file.header().size())
        .filter(place -> !places.containsValue(place))
        .mapToObj(file.header()::get)
        .filter(name -> !name.isEmpty())
        .collect(Collectors.toList());
  }
}
