package vestiary.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.VestingPolicies;

/**
 * What a plan was made from, as it is kept beside it: so that later what has changed can be told,
 * and nothing else planned anew.
 *
 * @param churches between which the journeys are, in the order of their rows and columns
 * @param seconds of each journey, row by row; -1 where there is none
 * @param starts where each piece lay when the days began, by code
 */
record Basis(
    List<Need> needs,
    List<Piece> pieces,
    List<Hold> holds,
    List<Ride> rides,
    List<ChurchId> churches,
    List<Long> seconds,
    VestingPolicies policies,
    Map<String, ChurchId> starts) {

  private static final long NO_WAY = -1;

  static Basis of(Situation situation) {
    Span span = situation.span();
    List<ChurchId> churches = churches(situation);
    List<Long> seconds = new ArrayList<>();
    for (ChurchId from : churches) {
      for (ChurchId to : churches) {
        seconds.add(span.journeys().find(from, to).map(Duration::toSeconds).orElse(NO_WAY));
      }
    }
    return new Basis(
        span.needs(),
        span.pieces(),
        situation.holds(),
        situation.rides(),
        churches,
        seconds,
        span.policies(),
        situation.starts());
  }

  /** The situation then, without what decides only what people like. */
  Situation situation() {
    return new Situation(
        new Span(needs, pieces, Journeys.of(journeys()), policies),
        holds,
        rides,
        Map.of(),
        Map.of(),
        Map.of(),
        List.of(),
        starts);
  }

  private List<Journey> journeys() {
    List<Journey> journeys = new ArrayList<>();
    for (int from = 0; from < churches.size(); from++) {
      for (int to = 0; to < churches.size(); to++) {
        long time = seconds.get(from * churches.size() + to);
        if (time != NO_WAY) {
          journeys.add(new Journey(churches.get(from), churches.get(to), Duration.ofSeconds(time)));
        }
      }
    }
    return journeys;
  }

  private static List<ChurchId> churches(Situation situation) {
    Stream<Collection<ChurchId>> all =
        Stream.of(
            situation.span().needs().stream().map(Need::church).toList(),
            situation.span().pieces().stream().map(Piece::home).toList(),
            situation.holds().stream().map(Hold::church).toList(),
            situation.rides().stream().flatMap(one -> Stream.of(one.from(), one.to())).toList());
    return all.flatMap(Collection::stream).distinct().sorted().toList();
  }
}
