package vestiary.device;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out shared devices, who acts on them, and the question who does. */
@ApplicationScoped
class DeviceSheets {

  private final SharedDevicesOfCluster devices;
  private final Hands hands;
  private final FindPeople people;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final Frames frames;

  DeviceSheets(
      SharedDevicesOfCluster devices,
      Hands hands,
      FindPeople people,
      ReadCluster cluster,
      CurrentVisitor visitor,
      Frames frames) {
    this.devices = devices;
    this.hands = hands;
    this.people = people;
    this.cluster = cluster;
    this.visitor = visitor;
    this.frames = frames;
  }

  @Transactional
  DevicesView all(Entries entries, String done, String problem) {
    List<Church> own = own();
    ZoneId zone = cluster.cluster().zone();
    return new DevicesView(
        frames.of("settings", "/devices"),
        done,
        problem,
        devices.within().stream().map(row -> row(row, zone)).toList(),
        entries.field("name"),
        entries.choice("church", own.stream().map(c -> Choice.Option.of(c.slug(), c.name()))),
        own.stream().map(c -> new Link(c.name(), "/devices/churches/" + c.slug())).toList());
  }

  @Transactional
  HandsView hands(Church church, Entries entries, String problem) {
    String address = "/devices/churches/" + church.slug();
    return new HandsView(
        frames.of("settings", address),
        church.name(),
        problem,
        address,
        hands.of(church.id().value()).stream()
            .map(
                hand ->
                    new HandsView.Row(
                        hand.name(),
                        hand.hasCode() ? say("by a code") : say("by name alone"),
                        "%s/hands/%s/removal".formatted(address, hand.id())))
            .toList(),
        entries.field("name"),
        entries.field("code"),
        people.all().stream().map(Person::name).toList());
  }

  @Transactional
  WhoView who(UUID church, String action, List<WhoView.Typed> typed, String problem) {
    List<Hands.Hand> all = hands.of(church);
    return new WhoView(
        frames.of("", "/week"),
        problem,
        action,
        typed,
        all.stream()
            .filter(hand -> !hand.hasCode())
            .map(hand -> new WhoView.Name(hand.person().toString(), hand.name()))
            .toList(),
        all.stream().anyMatch(Hands.Hand::hasCode),
        name(church));
  }

  @Transactional
  StoppedView stopped(String address) {
    return new StoppedView(frames.of("", address));
  }

  /**
   * The church that an address names.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  @Transactional
  Church church(String slug) {
    return cluster.getChurch(slug);
  }

  private List<Church> own() {
    return cluster.churches().stream()
        .filter(c -> visitor.visitor().mayIn(Action.LET_DEVICES, c.id().value()))
        .toList();
  }

  private String name(UUID church) {
    return cluster.churches().stream()
        .filter(c -> c.id().value().equals(church))
        .map(Church::name)
        .findFirst()
        .orElse("");
  }

  private DevicesView.Row row(SharedDeviceRow row, ZoneId zone) {
    return new DevicesView.Row(
        row.name,
        say(
            "%s; since %s; last used on %s%s",
            name(row.churchId),
            date(row.madeAt, zone),
            date(row.usedAt, zone),
            row.isStopped() ? say("; stopped after too many wrong codes") : ""),
        "/devices/%s/end".formatted(row.id),
        row.isStopped() ? "/devices/%s/go-on".formatted(row.id) : "");
  }

  private static String date(Instant at, ZoneId zone) {
    return Speech.dateAndYear(at.atZone(zone).toLocalDate());
  }
}
