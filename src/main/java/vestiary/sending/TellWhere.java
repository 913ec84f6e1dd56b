package vestiary.sending;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import vestiary.pool.OutPiece;
import vestiary.pool.PooledPiece;

/** Where everything of an item is, for programs. */
@ApplicationScoped
@Transactional
class TellWhere {

  private final ReadPlaces places;
  private final SendingWords words;
  private final Clock clock;

  TellWhere(ReadPlaces places, SendingWords words, Clock clock) {
    this.places = places;
    this.words = words;
    this.clock = clock;
  }

  /** One for each piece, in the order of the item. */
  List<WhereaboutsBody> of(Item item) {
    SendingWords.Said said = words.read();
    List<Place> found = places.of(item);
    List<WhereaboutsBody> bodies = new ArrayList<>();
    for (int at = 0; at < found.size(); at++) {
      bodies.add(body(found.get(at), item.pieces().get(at), said, clock.instant()));
    }
    return bodies;
  }

  private static WhereaboutsBody body(
      Place place, PooledPiece piece, SendingWords.Said said, Instant now) {
    Optional<OutPiece> out = place.out().stream().findFirst();
    Optional<Sent> open = place.history().stream().filter(Sent::isOut).findFirst();
    boolean inside = out.map(one -> !one.churches().isEmpty()).orElse(place.care().isEmpty());
    return new WhereaboutsBody(
        place.piece(),
        LoanBody.given(piece.set()),
        out.isPresent() ? "out" : place.care().isEmpty() ? "in" : "care",
        inside ? said.slug(place.church()) : null,
        place.since().stream().findFirst().map(at -> LoanBody.local(at, said)).orElse(null),
        out.map(one -> LoanBody.local(one.due(), said)).orElse(null),
        open.filter(one -> one.isOverdue(now))
            .map(one -> one.daysOverdue(now, said.zone()))
            .orElse(null),
        new PlaceWords(said, now).now(place, piece),
        place.history().stream().map(one -> LoanBody.of(one, said, now)).toList());
  }
}
