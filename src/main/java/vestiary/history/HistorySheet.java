package vestiary.history;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.UriBuilder;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.device.SharedDevicesOfCluster;
import vestiary.users.UserNames;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Sets out a history a page at a time. */
@ApplicationScoped
class HistorySheet {

  private static final int ON_A_PAGE = 50;

  /** Nobody turns so many pages; a date leads there faster. */
  private static final int LAST_PAGE = 10_000;

  private final ReadHistory history;
  private final ReadCluster cluster;
  private final UserNames users;
  private final SharedDevicesOfCluster devices;
  private final CurrentVisitor visitor;
  private final Frames frames;

  HistorySheet(
      ReadHistory history,
      ReadCluster cluster,
      UserNames users,
      SharedDevicesOfCluster devices,
      CurrentVisitor visitor,
      Frames frames) {
    this.history = history;
    this.cluster = cluster;
    this.users = users;
    this.devices = devices;
    this.visitor = visitor;
    this.frames = frames;
  }

  /**
   * One list.
   *
   * @param address of its page
   * @param concern id of what it is about; empty for the whole cluster
   */
  record Topic(String title, String address, String concern, List<Link> turn) {}

  /**
   * @param asked by the names of the query: who, from, to, page
   */
  HistoryView view(Topic topic, Entries asked) {
    int page = page(asked.text("page"));
    List<Change> found =
        history.newest(sift(topic.concern(), asked), (page - 1) * ON_A_PAGE, ON_A_PAGE + 1);
    return new HistoryView(
        frames.of("settings", topic.address()),
        topic.title(),
        topic.address(),
        asked.choice("who", makers()),
        asked.field("from"),
        asked.field("to"),
        topic.turn(),
        found.stream().limit(ON_A_PAGE).map(HistorySheet::line).toList(),
        page == 1 ? Link.NONE : new Link(say("Newer"), at(topic.address(), asked, page - 1)),
        found.size() > ON_A_PAGE
            ? new Link(say("Older"), at(topic.address(), asked, page + 1))
            : Link.NONE,
        files(topic, asked));
  }

  /** What is looked for, as the query has it. */
  Sift sift(String concern, Entries asked) {
    ZoneId zone = cluster.cluster().zone();
    return Sift.about(concern)
        .narrowed(asked.text("who"), asked.text("from"), asked.text("to"), zone);
  }

  private Stream<Choice.Option> makers() {
    return Stream.concat(
        Stream.of(Choice.Option.of(Sift.ANYBODY, say("anybody"))),
        Stream.concat(
            Stream.concat(users.all().entrySet().stream(), devices.names().entrySet().stream())
                .sorted(Map.Entry.comparingByValue())
                .map(user -> Choice.Option.of(user.getKey().toString(), user.getValue())),
            Stream.of(
                Choice.Option.of(Sift.JOBS, say("the server itself")),
                Choice.Option.of(NameThings.SERVER, say("the token of the server")))));
  }

  private List<Link> files(Topic topic, Entries asked) {
    if (!visitor.visitor().may(Action.KEEP_RECORD)) {
      return List.of();
    }
    return List.of(
        new Link(say("All of it as CSV"), file("/api/history.csv", topic, asked)),
        new Link(say("All of it as JSON"), file("/api/history", topic, asked)));
  }

  private static String file(String address, Topic topic, Entries asked) {
    UriBuilder file = UriBuilder.fromPath(address);
    if (!topic.concern().isEmpty()) {
      file.queryParam("about", topic.concern());
    }
    return query(file, asked);
  }

  private static String at(String address, Entries asked, int page) {
    return query(UriBuilder.fromPath(address).queryParam("page", page), asked);
  }

  private static String query(UriBuilder address, Entries asked) {
    for (String name : List.of("who", "from", "to")) {
      if (!asked.text(name).isEmpty()) {
        address.queryParam(name, "{" + name + "}");
      }
    }
    return address
        .buildFromMap(
            Map.of("who", asked.text("who"), "from", asked.text("from"), "to", asked.text("to")))
        .toString();
  }

  private static HistoryView.Line line(Change change) {
    String who =
        change.device().isEmpty() ? change.who() : say("%s, on %s", change.who(), change.device());
    return new HistoryView.Line(
        ValueWords.moment(change.at()), who, done(change), change.address(), change.fields());
  }

  private static String done(Change change) {
    return switch (change.deed()) {
      case "entered" -> say("%s entered", change.thing());
      case "changed" -> say("%s changed", change.thing());
      case "removed" -> say("%s removed", change.thing());
      default -> change.thing() + " " + change.deed();
    };
  }

  private static int page(String typed) {
    return Optional.of(typed)
        .filter(text -> text.matches("\\d{1,5}"))
        .map(Integer::parseInt)
        .filter(page -> page >= 1 && page <= LAST_PAGE)
        .orElse(1);
  }
}
