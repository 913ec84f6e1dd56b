package vestiary.plan;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import vestiary.cluster.Church;
import vestiary.pool.PooledPiece;
import vestiary.web.Speech;

/** Says what is still to be taken home, from where, and by when. */
final class RestingWords {

  private final TripWords words;
  private final ZoneId zone;

  RestingWords(List<Church> churches, List<PooledPiece> pieces, ZoneId zone) {
    this.words = new TripWords(churches, pieces, zone);
    this.zone = zone;
  }

  /**
   * What lies together.
   *
   * @param before when it is needed next, if that is known
   * @param told whether people can say here that it is home again
   */
  RestingView view(PlanResult.Resting resting, Optional<Instant> before, boolean told) {
    return new RestingView(
        words.named(resting.pieces()),
        words.church(resting.at()),
        words.church(resting.home()),
        before.map(moment -> say("before %s", moment(moment))).orElse(say("when somebody passes")),
        told ? resting.pieces() : List.of());
  }

  private String moment(Instant moment) {
    ZonedDateTime time = moment.atZone(zone);
    return Speech.day(time.toLocalDate()) + ", " + Speech.clock(time);
  }
}
