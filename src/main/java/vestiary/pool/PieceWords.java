package vestiary.pool;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.vesting.PieceKind;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** How pages say what a piece is, where it lies and when it is away. */
public final class PieceWords {

  private PieceWords() {}

  /** For example "deacon’s stole". */
  public static String kind(PieceKind kind) {
    return switch (kind) {
      case DEACON_STOLE -> say("deacon’s stole");
      case OTHER -> say("other piece");
      default -> Speech.noun(1, kind.id().replace('-', ' '));
    };
  }

  public static Ribbon ribbon(Colour colour) {
    return new Ribbon(colour, Speech.colour(colour));
  }

  /** "also as white"; empty if it serves as nothing else. */
  static String also(PooledPiece piece) {
    List<String> others = piece.colours().stream().skip(1).map(Speech::colour).toList();
    return others.isEmpty() ? "" : say("also as %s", Speech.list(others));
  }

  /** "132 cm, press 2, good, lent on asking Holy Trinity"; empty if nothing is known. */
  static String details(PooledPiece piece) {
    return String.join(
        ", ",
        Stream.of(
                piece.shade().isEmpty() ? "" : say("%s shade", piece.shade()),
                size(piece.size()),
                piece.form().isEmpty() ? "" : say("%s cut", piece.form()),
                piece.place(),
                piece.condition(),
                piece.ownerPolicy() == OwnerPolicy.ASKING
                    ? say("lent on asking %s", piece.owner())
                    : "")
            .filter(said -> !said.isEmpty())
            .toList());
  }

  /** Why it never leaves; empty if it may. */
  static String staysHome(PooledPiece piece) {
    if (piece.staysHome()) {
      return say("Does not leave this church");
    }
    return piece.ownerPolicy() == OwnerPolicy.NEVER
        ? say("%s does not lend it", piece.owner())
        : "";
  }

  /** Where it is or will be, from the care that is not over; empty if there is none. */
  static String care(PooledPiece piece, Instant now, ZoneId zone) {
    return piece.care().stream()
        .filter(c -> !c.isOverAt(now))
        .findFirst()
        .map(
            c ->
                Speech.sentence(c.reason()) + ", " + (c.isAt(now) ? until(c, zone) : span(c, zone)))
        .orElse("");
  }

  /** "27 November to 11 December 2026", both days included. */
  public static String span(Care care, ZoneId zone) {
    LocalDate first = date(care.from(), zone);
    if (care.findMissed().isPresent()) {
      return say("since %s", Speech.dateAndYear(first));
    }
    if (care.findEnd().isEmpty()) {
      return say("from %s until further notice", Speech.dateAndYear(first));
    }
    LocalDate last = last(care.findEnd().get(), zone);
    if (care.from().equals(Instant.EPOCH)) {
      return say("until %s", Speech.dateAndYear(last));
    }
    return Speech.span(first, last);
  }

  /** "Withdrawn from use on 3 May 2026: worn through. It went to the museum." */
  public static String withdrawn(Withdrawn one) {
    String went = one.to().isEmpty() ? "" : say(" It went to: %s.", one.to());
    return say("Withdrawn from use on %s: %s.%s", Speech.dateAndYear(one.on()), one.reason(), went);
  }

  private static String until(Care care, ZoneId zone) {
    return care.findEnd()
        .map(end -> say("until ") + Speech.dateAndYear(last(end, zone)))
        .orElse(say("until further notice"));
  }

  private static String size(String size) {
    return size.matches("\\d+") ? say("%s cm", size) : size;
  }

  private static LocalDate last(Instant end, ZoneId zone) {
    return date(end.minusNanos(1), zone);
  }

  private static LocalDate date(Instant moment, ZoneId zone) {
    return moment.atZone(zone).toLocalDate();
  }
}
