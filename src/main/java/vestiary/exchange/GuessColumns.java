package vestiary.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Guesses which column of a file holds what, by what it is called and by what stands in it. A
 * person looks at the guess before anything is done with it.
 */
final class GuessColumns {

  /** So many lines tell enough. */
  private static final int LOOKED_AT = 200;

  private static final int OUR_NAME = 100;
  private static final int OTHER_NAME = 60;
  private static final int PART_OF_NAME = 25;
  private static final int VALUES = 30;

  /** Names in part, or values, of which one may stand for several columns, are no guess alone. */
  private static final int LEAST = 30;

  private final ImportWhat what;
  private final RawTable table;
  private final TidyCells tidy;

  GuessColumns(ImportWhat what, RawTable table, TidyCells tidy) {
    this.what = what;
    this.table = table;
    this.tidy = tidy;
  }

  private record Fit(String column, int place, int points) {}

  /**
   * @param places in the file, from 0, by the names of our columns; each place once, but for a day
   *     and a time in one
   * @param points how well they fit, to be held against the same of another list
   */
  record Guess(Map<String, Integer> places, int points) {
    Guess {
      places = Map.copyOf(places);
    }
  }

  /** What fits best. */
  Guess guess() {
    List<Fit> fits = new ArrayList<>();
    for (Column column : what.columns()) {
      IntStream.range(0, table.header().size())
          .mapToObj(place -> new Fit(column.name(), place, points(column.name(), place)))
          .filter(fit -> fit.points() >= LEAST)
          .forEach(fits::add);
    }
    fits.sort(Comparator.comparingInt(Fit::points).reversed());
    Map<String, Integer> guessed = new HashMap<>();
    Set<Integer> taken = new HashSet<>();
    int points = 0;
    for (Fit fit : fits) {
      if (!guessed.containsKey(fit.column()) && taken.add(fit.place())) {
        guessed.put(fit.column(), fit.place());
        points += fit.points();
      }
    }
    points += together(guessed);
    titleInWords(guessed);
    return new Guess(guessed, points);
  }

  /**
   * Where one column holds both, a day that only its values tell is that of the time beside it, and
   * a time that of the day: another such column commonly says when it ends.
   *
   * @return points for a column that had no place before
   */
  private int together(Map<String, Integer> guessed) {
    return join(DayAndTime.TIME, DayAndTime.DATE, guessed)
        + join(DayAndTime.DATE, DayAndTime.TIME, guessed);
  }

  private int join(String one, String other, Map<String, Integer> guessed) {
    Integer place = guessed.get(one);
    Integer before = guessed.get(other);
    boolean isOpen =
        what.columns().stream().anyMatch(column -> column.name().equals(other))
            && (before == null || byName(other, table.header().get(before)) == 0);
    if (place == null || !isOpen || !DayAndTime.isIn(values(place))) {
      return 0;
    }
    guessed.put(other, place);
    return before == null ? VALUES : 0;
  }

  /** Words that tell the celebration of the title are the title, too, where nothing else is. */
  private void titleInWords(Map<String, Integer> guessed) {
    Integer place = guessed.get(ChurchLine.TITULAR);
    if (place != null && !values(place).stream().allMatch(TidyCells::isId)) {
      guessed.putIfAbsent(ChurchLine.TITLE, place);
    }
  }

  private int points(String column, int place) {
    Looks looks = Looks.of(what, column);
    int byName = byName(column, table.header().get(place));
    List<String> values = values(place);
    if (looks == Looks.TEXT || values.isEmpty()) {
      return byName;
    }
    if (looks == Looks.TITULAR) {
      // What a church is dedicated to in words that may mean several is its title, and no id.
      return values.stream().allMatch(v -> tidy.looksLike(looks, v)) ? byName : 0;
    }
    boolean fits =
        values.stream().filter(v -> tidy.looksLike(looks, v)).count() * 2 > values.size();
    boolean telling = looks == Looks.DATE || looks == Looks.TIME || looks == Looks.CHURCH;
    if (fits) {
      // Numbers and yes-or-no tell nothing of which number it is.
      return byName + (telling ? VALUES : 1);
    }
    if (looks == Looks.CHURCH && byName >= OTHER_NAME) {
      // Churches that nobody knows yet are named line by line, rather than left out without a word.
      return LEAST;
    }
    return telling && byName < OUR_NAME ? 0 : byName;
  }

  private int byName(String column, String written) {
    String name = PlainWords.joined(written);
    if (name.equals(PlainWords.joined(column))) {
      return OUR_NAME;
    }
    if (KnownWords.COLUMNS.of(what.id() + "." + column).contains(name)) {
      return OTHER_NAME + 5;
    }
    if (KnownWords.COLUMNS.of(column).contains(name)) {
      return OTHER_NAME;
    }
    return PlainWords.all(written).contains(column.toLowerCase(Locale.ROOT)) ? PART_OF_NAME + 5 : 0;
  }

  private List<String> values(int place) {
    return table.lines().stream()
        .limit(LOOKED_AT)
        .map(line -> line.cell(place))
        .filter(cell -> !cell.isEmpty())
        .toList();
  }
}
