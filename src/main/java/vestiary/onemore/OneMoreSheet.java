package vestiary.onemore;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.schedule.DatedMass;
import vestiary.vesting.AlbLength;
import vestiary.vesting.Role;
import vestiary.web.DayWords;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Sets out the page on which one more is vested. */
@ApplicationScoped
class OneMoreSheet {

  private final FindWays find;
  private final TakeOneMore take;
  private final ReadCluster cluster;
  private final Frames frames;

  OneMoreSheet(FindWays find, TakeOneMore take, ReadCluster cluster, Frames frames) {
    this.find = find;
    this.take = take;
    this.cluster = cluster;
    this.frames = frames;
  }

  @Transactional
  OneMoreView view(String id, Role role, AlbLength albs, String problem) {
    FindWays.Found found = find.find(id, role, albs);
    DatedMass mass = found.mass();
    String address = "/masses/%s/one-more".formatted(mass.id().value());
    boolean ownAlone = found.ways().size() == 1;
    return new OneMoreView(
        frames.of("day", address),
        say(
            "%s · %s, Mass at %s",
            mass.church().name(), Speech.day(mass.date()), Speech.clock(mass.start())),
        role == Role.DEACON ? say("A deacon has come.") : say("A concelebrant has come."),
        DayWords.ribbon(mass.colour()),
        mass.church().id().value().toString(),
        done(mass, address),
        problem,
        Stream.of(Role.CONCELEBRANT, Role.DEACON).map(one -> option(address, one, role)).toList(),
        List.of(
            new Link(say("Set-out sheet"), "/masses/%s/set-out".formatted(mass.id().value())),
            new Link(say("The Mass"), "/masses/" + mass.id().value())),
        role.id(),
        address,
        found.ways().stream().map(OneMoreSheet::offer).toList(),
        ownAlone ? WayWords.nothing(role, Speech.colour(mass.colour())) : "",
        found.heightMatters() && !ownAlone,
        albs.isKnown() ? Field.of(String.valueOf(albs.height())) : Field.empty());
  }

  private static OneMoreView.Option option(String address, Role one, Role chosen) {
    return new OneMoreView.Option(
        new Link(
            Speech.sentence(Speech.one(one.id(), Speech.noun(1, one.id()))),
            address + "?role=" + one.id()),
        one == chosen);
  }

  private List<OneMoreView.Done> done(DatedMass mass, String address) {
    ZoneId zone = cluster.cluster().zone();
    Set<String> seen = new HashSet<>();
    List<OneMoreView.Done> all = new ArrayList<>();
    for (OneMoreRow row : take.taken(mass)) {
      boolean isLatest = seen.add(row.role);
      all.add(
          new OneMoreView.Done(
              WayWords.done(row),
              Speech.clock(row.takenAt.atZone(zone)),
              isLatest ? "%s/%s/undo".formatted(address, row.id) : ""));
    }
    return all;
  }

  private static OneMoreView.Offer offer(Way way) {
    return new OneMoreView.Offer(
        way.id(),
        WayWords.title(way),
        NormWords.source(WayWords.source(way)),
        WayWords.pieces(way),
        way.codes(),
        WayWords.lacking(way),
        way.isOwn() ? say("Add him, in his own") : say("Take these"));
  }
}
