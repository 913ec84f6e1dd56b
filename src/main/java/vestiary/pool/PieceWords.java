package vestiary.pool;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.vesting.PieceKind;
import vestiary.web.English;
import vestiary.web.Ribbon;

/** How pages say what a piece is, where it lies and when it is away. */
public final class PieceWords {

  private PieceWords() {}

  /** For example "deacon's stole". */
  public static String kind(PieceKind kind) {
    return switch (kind) {
      case DEACON_STOLE -> "deacon’s stole";
      case OTHER -> "other piece";
      default -> kind.id().replace('-', ' ');
    };
  }

  public static Ribbon ribbon(Colour colour) {
    return new Ribbon(colour, colour.id());
  }

  /** "also as white"; empty if it serves as nothing else. */
  static String also(PooledPiece piece) {
    List<String> others = piece.colours().stream().skip(1).map(Colour::id).toList();
    return others.isEmpty() ? "" : "also as " + English.list(others);
  }

  /** "132 cm, press 2, good, lent on asking Holy Trinity"; empty if nothing is known. */
  static String details(PooledPiece piece) {
    return String.join(
        ", ",
        Stream.of(
                piece.shade().isEmpty() ? "" : piece.shade() + " shade",
                size(piece.size()),
                piece.form().isEmpty() ? "" : piece.form() + " cut",
                piece.place(),
                piece.condition(),
                piece.ownerPolicy() == OwnerPolicy.ASKING ? "lent on asking " + piece.owner() : "")
            .filter(said -> !said.isEmpty())
            .toList());
  }

  /** Why it never leaves; empty if it may. */
  static String staysHome(PooledPiece piece) {
    if (piece.staysHome()) {
      return "Does not leave this church";
    }
    return piece.ownerPolicy() == OwnerPolicy.NEVER ? piece.owner() + " does not lend it" : "";
  }

  /** Where it is or will be, from the care that is not over; empty if there is none. */
  static String care(PooledPiece piece, Instant now, ZoneId zone) {
    return piece.care().stream()
        .filter(c -> !c.isOverAt(now))
        .findFirst()
        .map(
            c ->
                English.sentence(c.reason())
                    + ", "
                    + (c.isAt(now) ? until(c, zone) : span(c, zone)))
        .orElse("");
  }

  /** "27 November to 11 December 2026", both days included. */
  public static String span(Care care, ZoneId zone) {
    LocalDate first = date(care.from(), zone);
    if (care.findMissed().isPresent()) {
      return "since " + English.dateAndYear(first);
    }
    if (care.findEnd().isEmpty()) {
      return "from " + English.dateAndYear(first) + " until further notice";
    }
    LocalDate last = last(care.findEnd().get(), zone);
    if (care.from().equals(Instant.EPOCH)) {
      return "until " + English.dateAndYear(last);
    }
    return last.isAfter(first) ? English.span(first, last) : English.dateAndYear(first);
  }

  /** "Withdrawn from use on 3 May 2026: worn through. It went to the museum." */
  public static String withdrawn(Withdrawn one) {
    String went = one.to().isEmpty() ? "" : " It went to: %s.".formatted(one.to());
    return "Withdrawn from use on %s: %s.%s"
        .formatted(English.dateAndYear(one.on()), one.reason(), went);
  }

  private static String until(Care care, ZoneId zone) {
    return care.findEnd()
        .map(end -> "until " + English.dateAndYear(last(end, zone)))
        .orElse("until further notice");
  }

  private static String size(String size) {
    return size.matches("\\d+") ? size + " cm" : size;
  }

  private static LocalDate last(Instant end, ZoneId zone) {
    return date(end.minusNanos(1), zone);
  }

  private static LocalDate date(Instant moment, ZoneId zone) {
    return moment.atZone(zone).toLocalDate();
  }
}
