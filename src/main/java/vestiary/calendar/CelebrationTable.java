package vestiary.calendar;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The celebrations of the general calendar and of each national one, read once. */
final class CelebrationTable {

  private static final String GENERAL = "General Roman Calendar";
  private static final List<Entry> FIXED = read("general.csv", GENERAL);
  private static final List<Entry> MOVABLE = read("movable.csv", GENERAL);
  private static final Map<String, List<Entry>> NATIONAL = new ConcurrentHashMap<>();

  private CelebrationTable() {}

  static List<Entry> fixed() {
    return FIXED;
  }

  static List<Entry> movable() {
    return MOVABLE;
  }

  /** What a national calendar adds to the general one or changes in it. */
  static List<Entry> proper(OfferedCalendar calendar) {
    if (calendar.id().equals("general")) return List.of();
    return NATIONAL.computeIfAbsent(
        calendar.id(), id -> read(id + ".csv", "Calendar of " + calendar.name().english()));
  }

  private static List<Entry> read(String table, String calendar) {
    return CsvTable.read(table).stream().map(line -> entry(line, calendar)).toList();
  }

  private static Entry entry(Map<String, String> line, String calendar) {
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    for (String kind : line.get("kinds").split("\\|")) kinds.add(term(Kind.class, kind));
    return new Entry(
        celebration(line, calendar, kinds),
        DateRule.parse(line.get("when")),
        line.get("when").length() > 5,
        kinds,
        line.get("option"),
        year(line.get("since"), 0),
        year(line.get("until"), Integer.MAX_VALUE));
  }

  private static Celebration celebration(
      Map<String, String> line, String calendar, Set<Kind> kinds) {
    LocalName name = new LocalName(line.get("name_en"), line.get("name_la"), line.get("name_es"));
    Precedence precedence = precedence(line.get("precedence"));
    List<Colour> colours =
        Arrays.stream(line.get("colours").split("\\|")).map(c -> term(Colour.class, c)).toList();
    return new Celebration(
        line.get("id"),
        name,
        term(Rank.class, line.get("rank")),
        precedence,
        colours,
        calendar + "; " + precedence.source(),
        ColourReasons.of(colours, kinds, name));
  }

  private static Precedence precedence(String cell) {
    return Precedence.valueOf(cell.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private static <T extends Enum<T> & Term> T term(Class<T> type, String id) {
    return Term.find(type, id)
        .orElseThrow(() -> new IllegalArgumentException("No " + type.getSimpleName() + " " + id));
  }

  private static int year(String cell, int otherwise) {
    return cell.isEmpty() ? otherwise : Integer.parseInt(cell);
  }
}
