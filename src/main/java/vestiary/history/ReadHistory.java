package vestiary.history;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;

/** Says in words what was changed, by whom, from what to what. */
@ApplicationScoped
class ReadHistory {

  /** What is told in no history to whoever may not read it where it stands. */
  private static final Map<String, Action> CONFIDENTIAL =
      Map.of(
          "intention", Action.SEE_INTENTIONS,
          "wishes", Action.PLAN,
          "own_set", Action.PLAN,
          "most_a_day", Action.PLAN,
          "granted_by", Action.PLAN,
          "granted_on", Action.PLAN);

  /** What a new row has by itself, and nobody chose. */
  private static final Set<String> NOTHING = Set.of("", "no", "0");

  private final AuditRows rows;
  private final ReadCluster cluster;
  private final NameThings naming;
  private final CurrentVisitor visitor;

  ReadHistory(AuditRows rows, ReadCluster cluster, NameThings naming, CurrentVisitor visitor) {
    this.rows = rows;
    this.cluster = cluster;
    this.naming = naming;
    this.visitor = visitor;
  }

  /**
   * The newest first.
   *
   * @param passed how many are passed over, 0 or more
   * @param most how many come at most, 1 or more
   */
  List<Change> newest(Sift sift, int passed, int most) {
    List<AuditRow> found = rows.newest(sift, passed, most);
    ZoneId zone = cluster.cluster().zone();
    Map<String, String> names = naming.named(found, zone);
    ValueWords words = new ValueWords(zone, names, new TermWords(naming.celebrations()));
    return found.stream().map(row -> change(row, words)).toList();
  }

  private Change change(AuditRow row, ValueWords words) {
    Map<String, String> names = words.names();
    return new Change(
        row.at.atZone(words.zone()),
        NameThings.who(row.visitor, names),
        row.device.isEmpty()
            ? ""
            : names.getOrDefault(row.device, say("a device that was shut out")),
        thing(row, names),
        row.deed,
        "/history/" + row.rowId,
        fields(row, words));
  }

  /** By its own name, or by those of what it is about. */
  private static String thing(AuditRow row, Map<String, String> names) {
    String noun = FieldWords.thing(row.kind);
    String name = names.getOrDefault(row.rowId.toString(), "");
    if (!name.isEmpty()) {
      return noun + " " + name;
    }
    String concerned =
        Arrays.stream(row.about)
            .map(id -> names.getOrDefault(id.toString(), ""))
            .filter(known -> !known.isEmpty())
            .sorted()
            .collect(Collectors.joining(", "));
    return concerned.isEmpty() ? noun : noun + ": " + concerned;
  }

  private List<Change.Field> fields(AuditRow row, ValueWords words) {
    Set<String> columns = new TreeSet<>(row.before.keySet());
    columns.addAll(row.after.keySet());
    return columns.stream()
        .filter(column -> !FieldWords.isSilent(row.kind, column))
        .filter(this::mayRead)
        .map(column -> field(row, column, words))
        .filter(field -> !saysNothing(row, field))
        .toList();
  }

  private boolean mayRead(String column) {
    return !CONFIDENTIAL.containsKey(column) || visitor.visitor().may(CONFIDENTIAL.get(column));
  }

  private static Change.Field field(AuditRow row, String column, ValueWords words) {
    return new Change.Field(
        FieldWords.field(row.kind, column),
        words.say(row.kind, column, row.before.get(column)),
        words.say(row.kind, column, row.after.get(column)));
  }

  private static boolean saysNothing(AuditRow row, Change.Field field) {
    return row.deed.equals("changed")
        ? field.before().equals(field.after())
        : NOTHING.contains(field.before()) && NOTHING.contains(field.after());
  }
}
