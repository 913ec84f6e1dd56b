package vestiary.history;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.users.UserNames;
import vestiary.web.English;

/** Says in words what was changed. */
@ApplicationScoped
class ReadHistory {

  private static final int MOST = 200;
  private static final String INTENTION = "intention";

  private static final Map<String, String> NOUNS =
      Map.ofEntries(
          Map.entry("cluster", "Settings"),
          Map.entry("mass", "Mass"),
          Map.entry("pattern", "Recurring Mass"),
          Map.entry("vestment_set", "Set"),
          Map.entry("occupation", "Piece held, out or in care"),
          Map.entry("proper", "Day of your own"),
          Map.entry("proper_church", "Day of your own, its church"),
          Map.entry("app_user", "User"),
          Map.entry("user_church", "User, their church"),
          Map.entry("user_token", "User, a token"),
          Map.entry("user_mail", "User, a mail address"),
          Map.entry("user_passkey", "User, a device to sign in by"),
          Map.entry("user_outside", "User, a sign-in by another service"),
          Map.entry("plan", "Plan"),
          Map.entry("person_mail", "Mail address of a person"),
          Map.entry("asking", "Journey given to somebody"),
          Map.entry("consent", "Answer of an owner"),
          Map.entry("applied_remedy", "What mends a clash"),
          Map.entry("accepted_step", "Lawful substitute"),
          Map.entry("movement", "Journey of a piece"));

  private final AuditRows rows;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final UserNames users;
  private final CurrentVisitor visitor;

  ReadHistory(
      AuditRows rows,
      ReadCluster cluster,
      FindPeople people,
      UserNames users,
      CurrentVisitor visitor) {
    this.rows = rows;
    this.cluster = cluster;
    this.people = people;
    this.users = users;
    this.visitor = visitor;
  }

  /** The newest 200 changes of the cluster. */
  List<HistoryView.Change> newest() {
    return words(rows.newest(MOST));
  }

  /** The newest 200 of one Mass, piece, user or other thing, by its id. */
  List<HistoryView.Change> of(UUID row) {
    return words(rows.of(row, MOST));
  }

  /** The newest 200 that a user made. */
  List<HistoryView.Change> by(UUID user) {
    return words(rows.by(user.toString(), MOST));
  }

  private List<HistoryView.Change> words(List<AuditRow> found) {
    ZoneId zone = cluster.cluster().zone();
    Map<String, String> names = names();
    return found.stream().map(row -> change(row, zone, names)).toList();
  }

  /** Rows point at others by ids, which nobody knows by heart. */
  private Map<String, String> names() {
    Map<String, String> names = new HashMap<>();
    cluster.churches().forEach(c -> names.put(c.id().value().toString(), c.name()));
    people.all().forEach(p -> names.put(p.id().toString(), p.name()));
    users.all().forEach((id, name) -> names.put(id.toString(), name));
    return names;
  }

  private HistoryView.Change change(AuditRow row, ZoneId zone, Map<String, String> names) {
    ZonedDateTime at = row.at.atZone(zone);
    String noun = NOUNS.getOrDefault(row.kind, English.sentence(row.kind));
    return new HistoryView.Change(
        "%s, %s".formatted(English.dateAndYear(at.toLocalDate()), English.clock(at)),
        who(row.visitor, names),
        "%s %s".formatted(noun, row.deed),
        "/history/" + row.rowId,
        fields(row, names));
  }

  private List<HistoryView.Field> fields(AuditRow row, Map<String, String> names) {
    boolean hidesIntention = !visitor.visitor().may(Action.SEE_INTENTIONS);
    TreeSet<String> columns = new TreeSet<>(row.before.keySet());
    columns.addAll(row.after.keySet());
    return columns.stream()
        .filter(column -> !(hidesIntention && column.equals(INTENTION)))
        .map(
            column ->
                new HistoryView.Field(
                    column.replaceFirst("_id$", "").replace('_', ' '),
                    text(row.before.get(column), names),
                    text(row.after.get(column), names)))
        .filter(field -> !(field.before().isEmpty() && field.after().isEmpty()))
        .toList();
  }

  private static String who(String mark, Map<String, String> names) {
    return switch (mark) {
      case "" -> "The server itself";
      case "server" -> "The token of the server";
      default -> names.getOrDefault(mark, "Somebody who is let in no more");
    };
  }

  private static String text(Object value, Map<String, String> names) {
    if (value instanceof Collection<?> several) {
      return several.stream().map(v -> text(v, names)).collect(Collectors.joining(", "));
    }
    if (value instanceof Map<?, ?> parts) {
      return parts.entrySet().stream()
          .map(part -> "%s %s".formatted(part.getKey(), text(part.getValue(), names)))
          .collect(Collectors.joining(", "));
    }
    if (value instanceof Boolean is) {
      return is ? "yes" : "no";
    }
    String said = value == null ? "" : value.toString();
    return names.getOrDefault(said, said);
  }
}
