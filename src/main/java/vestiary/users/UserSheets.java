package vestiary.users;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.Reach;
import vestiary.access.Role;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Sets out who may come in. */
@ApplicationScoped
@Transactional
class UserSheets {

  private static final List<String> FIELDS = List.of("login", "name", "role", "churches", "person");

  private final Frames frames;
  private final UserRows users;
  private final UserChurchRows churches;
  private final ReadCluster cluster;
  private final FindPeople people;

  UserSheets(
      Frames frames,
      UserRows users,
      UserChurchRows churches,
      ReadCluster cluster,
      FindPeople people) {
    this.people = people;
    this.frames = frames;
    this.users = users;
    this.churches = churches;
    this.cluster = cluster;
  }

  /**
   * What is said over a form.
   *
   * @param link to hand on, just made; empty otherwise
   */
  record Note(String done, String problem, String link) {
    static final Note NONE = new Note("", "", "");
  }

  UsersView all() {
    List<UsersView.Row> rows =
        users.inOrder().stream()
            .map(u -> new UsersView.Row(new Link(u.name, "/users/" + u.id), u.login, about(u)))
            .toList();
    return new UsersView(
        frames.of("users", "/users"), rows, new Link(say("Let somebody in"), "/users/new"));
  }

  UserForm fresh(Entries entries, Note note) {
    return form(say("Let somebody in"), "/users", "", entries, note);
  }

  UserForm stored(String id, Note note) {
    UserRow user = users.get(id);
    return typed(id, entries(user), note);
  }

  UserForm typed(String id, Entries entries, Note note) {
    UserRow user = users.get(id);
    return form(user.name, "/users/" + id, "/users/" + id, entries, note);
  }

  static List<String> fields() {
    return FIELDS;
  }

  private Entries entries(UserRow user) {
    Set<UUID> kept = churches.churchesOf(user.id);
    String[] slugs =
        cluster.churches().stream()
            .filter(c -> kept.contains(c.id().value()))
            .map(Church::slug)
            .toArray(String[]::new);
    return Entries.of(
        Map.of(
            "login", List.of(user.login),
            "name", List.of(user.name),
            "role", List.of(user.role),
            "churches", List.of(slugs),
            "person", List.of(slug(user.personId))));
  }

  private String slug(UUID person) {
    return Optional.ofNullable(person).flatMap(people::find).map(Person::slug).orElse("");
  }

  private Stream<Choice.Option> people() {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("Nobody"))),
        people.all().stream().map(p -> Choice.Option.of(p.slug(), p.calledName())));
  }

  private UserForm form(String title, String action, String stored, Entries entries, Note note) {
    List<String> kept = entries.all("churches");
    return new UserForm(
        frames.of("users", action),
        title,
        note.done(),
        note.problem(),
        action,
        entries.field("login"),
        entries.field("name"),
        entries.choice(
            "role", Stream.of(Role.values()).map(r -> Choice.Option.of(r.id(), r.word()))),
        new Choice(
            cluster.churches().stream()
                .map(c -> new Choice.Option(c.slug(), c.name(), kept.contains(c.slug())))
                .toList(),
            entries.error("churches")),
        entries.choice("person", people()),
        note.link(),
        stored.isEmpty() ? "" : stored + "/link",
        stored.isEmpty() ? "" : stored + "/sessions/end",
        stored.isEmpty() ? "" : stored + "/tokens/end",
        stored.isEmpty() ? "" : stored + "/removal",
        Stream.of(Role.values()).map(UserSheets::line).toList());
  }

  private static UserForm.RoleLine line(Role role) {
    String may =
        Arrays.stream(Action.values())
            .filter(a -> a != Action.KEEP_OWN_ACCOUNT && a.reach(role) != Reach.NOWHERE)
            .map(
                a ->
                    say(a.words())
                        + (a.reach(role) == Reach.OWN_CHURCHES
                            ? say(" (in the churches ticked)")
                            : ""))
            .collect(Collectors.joining(". "));
    return new UserForm.RoleLine(role.word(), may + ".");
  }

  private static String about(UserRow user) {
    String word = user.toRole().word();
    if (user.demo) {
      return word + say(", of the demo");
    }
    return user.password.isEmpty() ? word + say(", has not chosen a password yet") : word;
  }
}
