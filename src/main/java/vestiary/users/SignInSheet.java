package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.UriBuilder;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.access.DefaultCluster;
import vestiary.access.Elsewhere;
import vestiary.access.Role;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.web.Entries;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the page where people come in. */
@ApplicationScoped
class SignInSheet {

  private final Frames frames;
  private final ReadCluster cluster;
  private final UserRows users;
  private final UserChurchRows churches;
  private final PublicAddress here;
  private final OpenIdProvider provider;
  private final Clusters clusters;
  private final Elsewhere elsewhere;
  private final CurrentCluster current;
  private final DefaultCluster first;

  SignInSheet(
      Frames frames,
      ReadCluster cluster,
      UserRows users,
      UserChurchRows churches,
      PublicAddress here,
      OpenIdProvider provider,
      Clusters clusters,
      Elsewhere elsewhere,
      CurrentCluster current,
      DefaultCluster first) {
    this.provider = provider;
    this.here = here;
    this.frames = frames;
    this.cluster = cluster;
    this.users = users;
    this.churches = churches;
    this.clusters = clusters;
    this.elsewhere = elsewhere;
    this.current = current;
    this.first = first;
  }

  /**
   * The page as everybody sees it, so that it does not tell whether a word is that of a cluster.
   *
   * @param word as it was typed or stands in the address; may be empty
   */
  SignInView view(String word, Entries entries, String problem) {
    List<SignInView.DemoCluster> demo =
        clusters.demos().contains(current.id()) ? demo() : List.of();
    return QuarkusTransaction.joiningExisting().call(() -> page(word, entries, problem, demo));
  }

  /**
   * The same for whoever tries too often: what was typed, and no more, since a crowd that tries
   * passwords must cost the others nothing. It reads no row.
   */
  SignInView bare(String word, Entries entries, String problem) {
    return view(Frame.empty(), word, entries, problem, List.of(), new Access(true, false));
  }

  private SignInView page(
      String word, Entries entries, String problem, List<SignInView.DemoCluster> demo) {
    boolean isFirst = word.isEmpty() && current.id().equals(first.id());
    boolean hasBegun = !demo.isEmpty() || !isFirst || users.countAdministratorsWithPassword() > 0;
    return view(
        frames.of("", "/sign-in"),
        word,
        entries,
        problem,
        demo,
        new Access(hasBegun, clusters.areSeveral()));
  }

  /**
   * @param begun whether anybody could come in at all
   * @param several whether people must say which cluster is theirs
   */
  private record Access(boolean begun, boolean several) {}

  private SignInView view(
      Frame frame,
      String word,
      Entries entries,
      String problem,
      List<SignInView.DemoCluster> demo,
      Access access) {
    String back = Back.of(entries.text("back"));
    return new SignInView(
        frame,
        problem,
        entries.field("login"),
        new Field("", entries.error("password")),
        entries.isTicked("stays"),
        back,
        word,
        !word.isEmpty() || access.several(),
        SignInPage.address(word),
        demo,
        access.begun(),
        here.origin(),
        outside(back),
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

  private List<SignInView.DemoCluster> demo() {
    return clusters.demos().stream().map(id -> elsewhere.call(id, () -> demo(id))).toList();
  }

  private SignInView.DemoCluster demo(UUID id) {
    return new SignInView.DemoCluster(
        cluster.cluster().name(), "/sign-in/demo?cluster=" + id, people());
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
    return said.isEmpty() ? word : say("%s of %s", word, Speech.list(said));
  }
}
