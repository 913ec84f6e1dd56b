package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.core.UriBuilder;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Role;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.web.English;
import vestiary.web.Entries;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Sets out the page where people come in. */
@ApplicationScoped
@Transactional
class SignInSheet {

  private final Frames frames;
  private final ReadCluster cluster;
  private final UserRows users;
  private final UserChurchRows churches;
  private final PublicAddress here;
  private final OpenIdProvider provider;

  SignInSheet(
      Frames frames,
      ReadCluster cluster,
      UserRows users,
      UserChurchRows churches,
      PublicAddress here,
      OpenIdProvider provider) {
    this.provider = provider;
    this.here = here;
    this.frames = frames;
    this.cluster = cluster;
    this.users = users;
    this.churches = churches;
  }

  SignInView view(Entries entries, String problem) {
    boolean isDemo = cluster.findDemoMonday().isPresent();
    return new SignInView(
        frames.of("", "/sign-in"),
        problem,
        entries.field("login"),
        new Field("", entries.error("password")),
        entries.isTicked("stays"),
        Back.of(entries.text("back")),
        isDemo ? people() : List.of(),
        isDemo || users.countAdministratorsWithPassword() > 0,
        here.origin(),
        outside(Back.of(entries.text("back"))),
        CarriedForm.of(entries).hidden());
  }

  private Link outside(String back) {
    return new Link(
        provider.isOn() ? provider.name() : "",
        UriBuilder.fromPath("/sign-in/outside")
            .queryParam("back", "{back}")
            .build(back)
            .toString());
  }

  private List<SignInView.DemoPerson> people() {
    Map<UUID, String> names =
        cluster.churches().stream().collect(Collectors.toMap(c -> c.id().value(), Church::name));
    return users.ofDemo().stream()
        .map(u -> new SignInView.DemoPerson(u.id.toString(), u.name, role(u, names)))
        .toList();
  }

  private String role(UserRow user, Map<UUID, String> names) {
    String word = user.toRole().word();
    if (user.toRole() != Role.SACRISTAN) {
      return word;
    }
    Set<UUID> kept = churches.churchesOf(user.id);
    List<String> said = kept.stream().map(names::get).sorted().toList();
    return said.isEmpty() ? word : "%s of %s".formatted(word, English.list(said));
  }
}
