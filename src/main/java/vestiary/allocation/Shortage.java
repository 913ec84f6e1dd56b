package vestiary.allocation;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import vestiary.calendar.Colour;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/**
 * A finding with its proof: the pieces that could serve any of these needs cannot serve all of
 * them. Nearly always no two of the needs can share a piece, and they are more than the pieces:
 * whoever counts both lists has checked it. Numbers count first choices; substitutes decide the
 * severity alone.
 *
 * @param needs of one kind, in canonical order, one or more
 * @param stock what there is of that kind and colour
 * @param unserved as many of the needs as there are pieces too few, those that weigh least; one
 *     where the certificate shows no more
 * @param exhausted needs that must be met and that no lawful colour can serve, in canonical order;
 *     empty if a carriage or a substitute mends the finding. A chasuble's finding may carry stoles
 *     here, whose own finding it stands for; a dalmatic's likewise deacons' stoles
 * @param late the pair that tells it, of an unreachable finding; else empty
 * @param certificate what shows that the needs cannot all be served
 */
public record Shortage(
    Level level,
    ShortageKind kind,
    List<Need> needs,
    Stock stock,
    List<Need> unserved,
    List<Need> exhausted,
    List<LateArrival> late,
    Certificate certificate) {

  public Shortage {
    Objects.requireNonNull(level, "level");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(stock, "stock");
    needs = List.copyOf(needs);
    unserved = List.copyOf(unserved);
    exhausted = List.copyOf(exhausted);
    late = List.copyOf(late);
    Objects.requireNonNull(certificate, "certificate");
    if (allClash(certificate) && needs.size() <= stock.pieces().size()) {
      throw new IllegalArgumentException(
          needs.size() + " needs and " + stock.pieces().size() + " pieces are no shortage");
    }
  }

  private static boolean allClash(Certificate certificate) {
    return certificate.kind() == CertificateKind.ALL_CLASH;
  }

  /** Whether no two of the needs can share a piece, so that both lists are counted. */
  public boolean allClash() {
    return allClash(certificate);
  }

  public Severity severity() {
    return exhausted.isEmpty() ? Severity.DECIDE : Severity.MUST;
  }

  public PieceKind pieceKind() {
    return needs.get(0).kind();
  }

  /** The colour of the first need; others may ask for another that the same pieces serve. */
  public Colour colour() {
    return needs.get(0).colour();
  }

  /** How many needs are concerned, 1 or more. */
  public int needed() {
    return needs.size();
  }

  /** How many pieces could serve any of them; fewer than needed where all clash. */
  public int available() {
    return stock.pieces().size();
  }

  /** How many are too few, 1 or more. */
  public int missing() {
    return allClash() ? needed() - available() : unserved.size();
  }

  public List<Piece> pieces() {
    return stock.pieces();
  }

  public List<Piece> elsewhere() {
    return stock.elsewhere();
  }

  public List<NotServing> notServing() {
    return stock.notServing();
  }

  /** The Masses concerned, each once, in order of time. */
  public List<MassId> masses() {
    return needs.stream().map(Need::mass).distinct().toList();
  }

  /** The Masses of those that go without, each once, in order of time. */
  public List<MassId> unservedMasses() {
    return unserved.stream().map(Need::mass).distinct().toList();
  }

  /** The same with other pieces, and others who go without. */
  public Shortage with(Stock other, List<Need> without) {
    return new Shortage(level, kind, needs, other, without, exhausted, late, certificate);
  }

  /** The same with these needs exhausted. */
  public Shortage withExhausted(List<Need> needs) {
    return new Shortage(level, kind, this.needs, stock, unserved, needs, late, certificate);
  }

  /** The same, shown in another way or not at all. */
  public Shortage with(Certificate other) {
    return new Shortage(level, kind, needs, stock, unserved, exhausted, late, other);
  }

  /** First set-out of the needs. */
  public Instant from() {
    return needs.stream().map(n -> n.window().setOut()).min(Comparator.naturalOrder()).get();
  }

  /** Last clearance of the needs. */
  public Instant to() {
    return needs.stream().map(n -> n.window().cleared()).max(Comparator.naturalOrder()).get();
  }
}
