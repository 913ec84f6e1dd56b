package vestiary.oversight;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.access.Action;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.access.CurrentVisitor;
import vestiary.access.DefaultCluster;
import vestiary.access.Visitor;
import vestiary.cluster.CalendarEntries;
import vestiary.users.PublicAddress;
import vestiary.web.Entries;
import vestiary.web.Frames;

/** Sets out the clusters that somebody has to do with, and the form for another. */
@ApplicationScoped
class ClustersSheet {

  static final List<String> FIELDS = List.of("word", "code");
  static final List<String> OPENING =
      List.of("name", "word", "calendar", "timeZone", "administrator");

  private final Frames frames;
  private final CurrentVisitor current;
  private final CurrentCluster cluster;
  private final DefaultCluster first;
  private final Clusters clusters;
  private final Overseers overseers;
  private final PublicAddress address;

  ClustersSheet(
      Frames frames,
      CurrentVisitor current,
      CurrentCluster cluster,
      DefaultCluster first,
      Clusters clusters,
      Overseers overseers,
      PublicAddress address) {
    this.frames = frames;
    this.current = current;
    this.cluster = cluster;
    this.first = first;
    this.clusters = clusters;
    this.overseers = overseers;
    this.address = address;
  }

  /**
   * @param places where the visitor may look
   */
  @Transactional
  ClustersView view(List<KnownOverseers.Place> places, Entries typed, String done, String problem) {
    Visitor visitor = current.visitor();
    Clusters.Named here = clusters.named(cluster.id());
    Entries filled = typed.values().containsKey("word") ? typed : typed.with("word", here.word());
    boolean keeps = visitor.may(Action.KEEP_OVERSEERS);
    return new ClustersView(
        frames.of("settings", "/clusters"),
        done,
        problem,
        here.name(),
        signIn(here),
        filled.withErrors(typed.errors()).field("word"),
        places.stream().map(this::place).toList(),
        visitor instanceof Visitor.User user
            ? new OverseerCode(cluster.id(), user.id()).text()
            : "",
        keeps ? overseers.all().stream().map(ClustersSheet::overseer).toList() : List.of(),
        typed.field("code"),
        visitor.may(Action.SETTLE_CLUSTER),
        keeps,
        visitor.may(Action.OPEN_CLUSTERS) && here.id().equals(first.id()));
  }

  @Transactional
  OpeningView opening(Entries typed, String problem) {
    return opening(typed, problem, "", "", "");
  }

  @Transactional
  OpeningView opened(OpenAnother.Opened opened) {
    Clusters.Named fresh = opened.cluster();
    return opening(Entries.empty(), "", fresh.name(), opened.link(), signIn(fresh));
  }

  /** The whole address by which people of a cluster sign in. */
  private String signIn(Clusters.Named one) {
    return address.of("/sign-in?cluster=" + one.word());
  }

  private OpeningView opening(
      Entries typed, String problem, String opened, String link, String signIn) {
    return new OpeningView(
        frames.of("settings", "/clusters/new"),
        problem,
        typed.field("name"),
        typed.field("word"),
        typed.choice("calendar", CalendarEntries.calendars()),
        typed.field("timeZone"),
        CalendarEntries.zones(),
        typed.field("administrator"),
        opened,
        link,
        signIn);
  }

  private ClustersView.Place place(KnownOverseers.Place place) {
    boolean isHere = place.cluster().id().equals(cluster.id());
    return new ClustersView.Place(
        place.cluster().name(),
        place.cluster().word(),
        isHere ? "" : "/clusters/%s/look".formatted(place.leave()));
  }

  private static ClustersView.Overseer overseer(Overseers.Overseer one) {
    return new ClustersView.Overseer(
        one.name().isEmpty() ? say("Somebody who is let in no more") : one.name(),
        say("of ") + one.home(),
        "/clusters/overseers/%s/end".formatted(one.id()));
  }
}
