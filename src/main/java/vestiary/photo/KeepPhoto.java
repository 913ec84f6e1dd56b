package vestiary.photo;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadCare;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Adds a photograph to a piece and takes one away. */
@ApplicationScoped
public class KeepPhoto {

  private static final int MOST = 12;

  private final ReadPicture read;
  private final PhotoRows photos;
  private final PictureRows pictures;
  private final ReadPool pool;
  private final ReadCare care;
  private final CurrentVisitor visitor;
  private final Clock clock;

  KeepPhoto(
      ReadPicture read,
      PhotoRows photos,
      PictureRows pictures,
      ReadPool pool,
      ReadCare care,
      CurrentVisitor visitor,
      Clock clock) {
    this.read = read;
    this.photos = photos;
    this.pictures = pictures;
    this.pool = pool;
    this.care = care;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * Says no to what is no photograph before anything else is done.
   *
   * @throws Refused if it cannot be read
   */
  public Ready look(Path file) {
    return new Ready(read.read(file));
  }

  /** A photograph that was read and is not kept yet. */
  public record Ready(Picture picture) {}

  /**
   * Keeps a photograph.
   *
   * @param careId id of the time in care whose cause it shows; empty for a picture of the piece
   * @throws Refused if there is no such piece or care, or the piece has twelve already
   */
  @Transactional
  public Photo add(String code, String careId, Ready ready) {
    PooledPiece piece = pool.get(code);
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, piece.home().value());
    UUID id = pool.id(code);
    if (photos.count("pieceId", id) >= MOST) {
      throw new Refused(
          new Refusal.Taken(
              ReadPicture.FIELD,
              say(
                  "%s has %d photographs already, which is the most. Remove one first.",
                  piece.code(), MOST)));
    }
    PhotoRow row = new PhotoRow();
    row.pieceId = id;
    row.occupationId = careId.isEmpty() ? null : care.get(code, careId).care().id();
    row.width = ready.picture().width();
    row.height = ready.picture().height();
    row.addedAt = clock.instant();
    photos.persistAndFlush(row);
    pictures.keep(row.id, false, ready.picture().large());
    pictures.keep(row.id, true, ready.picture().small());
    return Photo.of(row);
  }

  /**
   * Removes a photograph for good.
   *
   * @throws Refused if the piece has no such photograph
   */
  @Transactional
  public void remove(String code, String id) {
    PooledPiece piece = pool.get(code);
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, piece.home().value());
    photos.delete(row(pool.id(code), id));
  }

  /** Photographs of a piece, oldest first. */
  @Transactional
  public List<Photo> of(UUID piece) {
    return ofPieces(List.of(piece));
  }

  /** The same of several. */
  @Transactional
  public List<Photo> ofPieces(Collection<UUID> pieces) {
    return photos.ofPieces(pieces).stream().map(Photo::of).toList();
  }

  /**
   * The picture that an address names, as JPEG.
   *
   * @throws Refused if the piece has no such photograph
   */
  @Transactional
  public byte[] jpeg(String code, String id, boolean small) {
    PhotoRow row = row(pool.id(code), id);
    return pictures.find("photoId = ?1 and small = ?2", row.id, small).singleResult().jpeg;
  }

  private PhotoRow row(UUID piece, String id) {
    return photos
        .findByIdOptional(Asked.id("photograph", id))
        .filter(found -> found.pieceId.equals(piece))
        .orElseThrow(() -> new Refused(new Refusal.NotThere("photograph", id)));
  }
}
