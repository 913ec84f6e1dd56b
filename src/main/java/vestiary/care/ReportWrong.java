package vestiary.care;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import vestiary.photo.KeepPhoto;
import vestiary.pool.Care;
import vestiary.pool.PooledPiece;
import vestiary.pool.PutInCare;
import vestiary.pool.ReadPool;
import vestiary.problem.Refused;

/** Somebody finds that something is wrong with a piece, or with a whole set. */
@ApplicationScoped
class ReportWrong {

  private final PutInCare care;
  private final ReadPool pool;
  private final KeepPhoto photos;
  private final Clock clock;

  ReportWrong(PutInCare care, ReadPool pool, KeepPhoto photos, Clock clock) {
    this.care = care;
    this.pool = pool;
    this.photos = photos;
    this.clock = clock;
  }

  /**
   * Takes it out of the pool at once.
   *
   * @param wholeSet whether the other pieces of its set, as far as they are not in care, go with it
   * @param shown photographs of what is wrong, or none
   * @return the care of the piece that was named
   * @throws Refused if a field is unfit or the piece is in care already
   */
  @Transactional
  Care report(
      String code, PutInCare.Request request, boolean wholeSet, List<KeepPhoto.Ready> shown) {
    PooledPiece piece = pool.get(code);
    Care made = care.put(piece.code(), request);
    if (wholeSet && !piece.set().isEmpty()) {
      others(piece).forEach(other -> care.put(other.code(), request));
    }
    shown.forEach(photo -> photos.add(piece.code(), made.id().toString(), photo));
    return made;
  }

  /** The other pieces of its set that are not in care, now or later. */
  List<PooledPiece> others(PooledPiece piece) {
    Instant now = clock.instant();
    return pool.pieces(now).stream()
        .filter(other -> !piece.set().isEmpty() && other.set().equals(piece.set()))
        .filter(other -> !other.code().equals(piece.code()) && other.care().isEmpty())
        .toList();
  }
}
