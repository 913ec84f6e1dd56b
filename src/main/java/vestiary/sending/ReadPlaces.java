package vestiary.sending;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.allocation.Lying;
import vestiary.pool.Care;
import vestiary.pool.OutPiece;
import vestiary.pool.OutPieces;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadTaken;
import vestiary.vesting.ChurchId;

/** Where things are now, and who had them last. */
@ApplicationScoped
@Transactional
public class ReadPlaces {

  private final OutPieces out;
  private final ReadTaken taken;
  private final ReadSent sent;
  private final Clock clock;

  ReadPlaces(OutPieces out, ReadTaken taken, ReadSent sent, Clock clock) {
    this.out = out;
    this.taken = taken;
    this.sent = sent;
    this.clock = clock;
  }

  /** One for each piece of the item, in its order. */
  public List<Place> of(Item item) {
    Instant now = clock.instant();
    Lying lying = taken.lying(now, now.plusSeconds(1));
    List<OutPiece> all = out.all();
    List<Sent> history = sent.of(item);
    return item.pieces().stream().map(piece -> place(piece, all, lying, history, now)).toList();
  }

  private static Place place(
      PooledPiece piece, List<OutPiece> all, Lying lying, List<Sent> history, Instant now) {
    List<OutPiece> away =
        all.stream().filter(one -> one.piece().equals(piece.code())).limit(1).toList();
    List<Sent> own = history.stream().filter(one -> one.code().equals(piece.code())).toList();
    List<Care> care =
        piece.care().stream()
            .filter(one -> !one.from().isAfter(now))
            .filter(one -> one.findEnd().filter(end -> !end.isAfter(now)).isEmpty())
            .limit(1)
            .toList();
    ChurchId church =
        away.stream()
            .flatMap(one -> one.churches().stream())
            .findFirst()
            .orElseGet(() -> lying.church(piece.code(), piece.home(), now));
    return new Place(
        piece.code(), church, away, care, since(away, care, church, own).stream().toList(), own);
  }

  private static Optional<Instant> since(
      List<OutPiece> away, List<Care> care, ChurchId church, List<Sent> own) {
    return Stream.of(
            away.stream().map(OutPiece::from),
            care.stream().map(Care::from).filter(from -> from.isAfter(Instant.EPOCH)),
            own.stream()
                .limit(1)
                .flatMap(one -> one.returns().stream())
                .filter(one -> one.church().equals(church))
                .map(Sent.Return::at))
        .flatMap(some -> some)
        .findFirst();
  }
}
