package vestiary.plan;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Who takes things along, how far it is, and the settings, as they were when a plan was made. */
final class RoadsSince {

  private final Situation before;
  private final Situation now;
  private final SinceWords words;

  RoadsSince(Situation before, Situation now, SinceWords words) {
    this.before = before;
    this.now = now;
    this.words = words;
  }

  List<SinceWords.Told> told() {
    List<SinceWords.Told> told = new ArrayList<>();
    without(before, now)
        .forEach(ride -> told.add(told(say("%s takes nothing along%s."), ride, true)));
    without(now, before)
        .forEach(ride -> told.add(told(say("%s can take things along%s."), ride, false)));
    if (!before.span().policies().equals(now.span().policies())) {
      told.add(new SinceWords.Told(say("The settings of vesting have changed."), true));
    }
    if (!sameJourneys()) {
      told.add(new SinceWords.Told(say("A journey takes longer or shorter than before."), true));
    }
    return told;
  }

  private static Set<Ride> without(Situation some, Situation others) {
    Set<Ride> rides = new LinkedHashSet<>(some.rides());
    others.rides().forEach(rides::remove);
    return rides;
  }

  private SinceWords.Told told(String sentence, Ride ride, boolean breaks) {
    String way =
        say(
            " from %s to %s on %s",
            words.church(ride.from()), words.church(ride.to()), words.moment(ride.departs()));
    return new SinceWords.Told(sentence.formatted(ride.who(), way), breaks);
  }

  private boolean sameJourneys() {
    Set<ChurchId> churches =
        Stream.concat(
                before.span().needs().stream().map(Need::church),
                before.span().pieces().stream().map(Piece::home))
            .collect(Collectors.toSet());
    return churches.stream()
        .allMatch(
            from ->
                churches.stream()
                    .allMatch(to -> time(before, from, to).equals(time(now, from, to))));
  }

  private static Object time(Situation situation, ChurchId from, ChurchId to) {
    return situation.span().journeys().find(from, to);
  }
}
