package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Speech;

/** Finds out by its columns which list a file is, where nobody has said it. */
@ApplicationScoped
class WhichList {

  /** What stands in place of a list where the file is to say it. */
  static final String UNSAID = "";

  private static final int SHOWN_NAMES = 12;

  /** One column that fits may be chance: every list has some name that others have too. */
  private static final int FEWEST = 2;

  private final KnownNames names;

  WhichList(KnownNames names) {
    this.names = names;
  }

  private record Fit(ImportWhat what, int points, List<Column> lacking) {}

  /**
   * Which list it is.
   *
   * @return id of an {@link ImportWhat}, or calendar
   * @throws BadFile if it cannot be read as either
   * @throws Refused if no list fits, or several do equally
   */
  String find(byte[] file) throws BadFile {
    CsvText text = CsvText.parseAny(file);
    return CalendarEvents.begins(text.text())
        ? ImportWords.CALENDAR
        : guess(RawTable.parse(text)).id();
  }

  private ImportWhat guess(RawTable table) {
    TidyCells tidy = names.read();
    List<Fit> fits =
        Arrays.stream(ImportWhat.values()).flatMap(what -> fit(what, table, tidy)).toList();
    List<Fit> best = best(fits.stream().filter(fit -> fit.lacking().isEmpty()).toList());
    if (best.size() == 1) {
      return best.get(0).what();
    }
    throw new Refused(
        Refusal.Unfit.of("what", best.isEmpty() ? none(table, nearest(fits)) : several(best)));
  }

  private static Stream<Fit> fit(ImportWhat what, RawTable table, TidyCells tidy) {
    GuessColumns.Guess guess = new GuessColumns(what, table, tidy).guess();
    return guess.places().size() < FEWEST
        ? Stream.empty()
        : Stream.of(
            new Fit(
                what,
                guess.points(),
                ColumnsSheet.lacking(what, guess.places().keySet()).toList()));
  }

  private static List<Fit> best(List<Fit> fits) {
    int most = fits.stream().mapToInt(Fit::points).max().orElse(0);
    return fits.stream().filter(fit -> fit.points() == most).toList();
  }

  /** Those that lack the fewest columns, and of them the best. */
  private static List<Fit> nearest(List<Fit> fits) {
    int fewest = fits.stream().mapToInt(fit -> fit.lacking().size()).min().orElse(0);
    return best(fits.stream().filter(fit -> fit.lacking().size() == fewest).toList());
  }

  private static String several(List<Fit> best) {
    return say(
        "By its columns the file may be any of these lists: %s. Choose which it is.",
        Speech.list(best.stream().map(fit -> ImportWords.name(fit.what())).toList()));
  }

  private static String none(RawTable table, List<Fit> nearest) {
    if (nearest.size() == 1) {
      Fit near = nearest.get(0);
      return say(
          "By its columns the file is none of the lists for certain. It comes nearest to \"%s\", but has no column for: %s. If it is that list, choose it; what is missing can be said on the next page.",
          ImportWords.name(near.what()),
          Speech.list(near.lacking().stream().map(Column::heading).toList()));
    }
    List<String> header =
        table.header().stream().filter(name -> !name.isEmpty()).limit(SHOWN_NAMES).toList();
    return header.isEmpty()
        ? say("The first line of the file names no columns. Write their names there.")
        : say(
            "The file does not say which list it is; its first line says: %s. Choose the list, or see below how its columns are called.",
            Speech.list(header.stream().map(ColumnsOfFile::shortened).toList()));
  }
}
