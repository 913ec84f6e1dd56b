package vestiary.pool;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import vestiary.calendar.Colour;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Make;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/**
 * One physical vestment with all its facts.
 *
 * @param code unique in the cluster
 * @param colours what it may serve as; the first is what it is
 * @param shade of violet, as people call it; empty if it has none
 * @param grade ferial, festive or solemn; empty if nobody said
 * @param size length in centimetres or as its label has it; empty if unknown
 * @param set code of the set it belongs to, or empty
 * @param suit name of the suit its set belongs to, or empty
 * @param owner whose it is; a parish, the diocese or a person
 * @param staysHome whether it never leaves its church
 * @param keptFrom Masses for which its owner has said no
 * @param care times in which it cannot be used that are not over, by start
 * @param withdrawn that it is out of use for good, or none while it is in use
 */
public record PooledPiece(
    String code,
    PieceKind kind,
    List<Colour> colours,
    String shade,
    String grade,
    String size,
    String form,
    String set,
    String suit,
    ChurchId home,
    String owner,
    OwnerPolicy ownerPolicy,
    String condition,
    String place,
    boolean staysHome,
    Set<MassId> keptFrom,
    List<Care> care,
    int version,
    Particulars particulars,
    List<Withdrawn> withdrawn) {

  public PooledPiece {
    colours = List.copyOf(colours);
    care = List.copyOf(care);
    keptFrom = Set.copyOf(keptFrom);
    withdrawn = List.copyOf(withdrawn);
  }

  /** What it is, among the colours it may serve as. */
  public Colour colour() {
    return colours.get(0);
  }

  /** Whether it is away at that moment. */
  boolean isInCare(Instant moment) {
    return care.stream().anyMatch(c -> c.isAt(moment));
  }

  /** What the engine must know of it. An owner who never lends keeps it at home. */
  public Piece toPiece() {
    return new Piece(
        code,
        kind,
        colours,
        home,
        staysHome || ownerPolicy == OwnerPolicy.NEVER,
        set,
        care.stream()
            .map(c -> new Away(c.from(), c.findEnd().orElse(Instant.MAX), c.reason()))
            .toList(),
        new Make(shade, grade, size),
        keptFrom);
  }
}
