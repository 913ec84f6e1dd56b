package vestiary.care;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.vesting.ChurchId;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** All that is in care now, what is late first. */
@ApplicationScoped
@Transactional
class CareList {

  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  CareList(ReadPool pool, ReadCluster cluster, Frames frames, Clock clock) {
    this.pool = pool;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  CareListView view() {
    ZoneId zone = cluster.cluster().zone();
    Instant now = clock.instant();
    Map<ChurchId, List<CareListView.Away>> byChurch =
        pool.pieces(now).stream()
            .collect(
                Collectors.groupingBy(
                    PooledPiece::home,
                    Collectors.flatMapping(p -> away(p, now, zone), Collectors.toList())));
    List<CareListView.Store> stores =
        cluster.churches().stream()
            .map(
                c ->
                    new CareListView.Store(
                        c.id().value().toString(),
                        c.name(),
                        byChurch.getOrDefault(c.id(), List.of())))
            .filter(store -> !store.away().isEmpty())
            .toList();
    return new CareListView(frames.of("vestments", "/care"), lead(stores), stores);
  }

  private static Stream<CareListView.Away> away(PooledPiece piece, Instant now, ZoneId zone) {
    return piece.care().stream()
        .filter(care -> care.isAt(now))
        .map(
            care ->
                new CareListView.Away(
                    piece.code(),
                    CareWords.title(piece),
                    CareWords.reason(care),
                    PieceWords.span(care, zone),
                    CareWords.late(care, zone),
                    "/care/%s/%s".formatted(piece.code(), care.id())));
  }

  private static String lead(List<CareListView.Store> stores) {
    List<CareListView.Away> all = stores.stream().flatMap(s -> s.away().stream()).toList();
    int late = (int) all.stream().filter(a -> !a.late().isEmpty()).count();
    if (all.isEmpty()) {
      return say("No piece is in care.");
    }
    return say(
        "%s %s in care; %s %s late.",
        Speech.sentence(Speech.count(all.size(), "piece")),
        all.size() == 1 ? say("is") : say("are"),
        late == 0 ? say("none") : Speech.count(late),
        late > 1 ? say("are") : say("is"));
  }
}
