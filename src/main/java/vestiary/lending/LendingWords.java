package vestiary.lending;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.lending.ReadLendings.Lending;
import vestiary.pool.PieceWords;
import vestiary.vesting.PieceKind;
import vestiary.web.Speech;

/** How a lending is told to one of its sides. */
final class LendingWords {

  private final ZoneId zone;

  /**
   * @param zone of the cluster that is told
   */
  LendingWords(ZoneId zone) {
    this.zone = zone;
  }

  /** "SS-D1: white dalmatic and deacon stole"; of several sets their codes alone. */
  static String what(Lending one) {
    List<String> codes =
        one.pieces().stream().map(p -> p.set().isEmpty() ? p.code() : p.set()).distinct().toList();
    if (codes.size() == 1) {
      return "%s: %s"
          .formatted(codes.get(0), Speech.tinted(colour(one.pieces().get(0)), kinds(one.pieces())));
    }
    return codes.size() <= 4
        ? Speech.list(codes)
        : say(
            "%s and %s more",
            String.join(", ", codes.subList(0, 3)), Speech.count(codes.size() - 3));
  }

  private static String colour(LentPiece one) {
    return Speech.colour(Term.find(Colour.class, one.colours().get(0)).orElseThrow());
  }

  private static String kinds(List<LentPiece> pieces) {
    return Speech.list(
        pieces.stream()
            .map(p -> Term.find(PieceKind.class, p.kind()).orElseThrow())
            .sorted()
            .map(PieceWords::kind)
            .distinct()
            .toList());
  }

  /** "7 to 13 December 2026", both days included. */
  String days(Lending one) {
    return Speech.span(date(one.from()), date(one.until().minusNanos(1)));
  }

  String over(Lending one) {
    if (one.ours()) {
      return one.state() == LendingState.OFFERED
          ? say("Offered to ") + one.other().name()
          : say("Lent to ") + one.other().name();
    }
    return one.state() == LendingState.OFFERED
        ? say("Offered by ") + one.other().name()
        : say("Borrowed from ") + one.other().name();
  }

  /** How it stands, in a sentence. */
  String state(Lending one) {
    String other = one.other().name();
    if (one.overdue()) {
      return one.ours()
          ? say("It should be back since %s, and nobody has said that it is.", last(one))
          : say("It should have gone back on %s, and nobody has said that it has.", last(one));
    }
    return switch (one.state()) {
      case OFFERED ->
          one.ours()
              ? say("%s has not answered yet; until then you use these pieces as ever.", other)
              : say("%s waits for your yes or no.", other);
      case ACCEPTED ->
          one.ours()
              ? say("%s has them for these days; here they count as away.", other)
              : say("You have them for these days, and they are counted with your own.");
      case DECLINED ->
          one.ours() ? say("%s does not need them.", other) : say("You did not need them.");
      case WITHDRAWN ->
          one.ours() ? say("You took the offer back.") : say("%s took the offer back.", other);
      case RETURNED ->
          one.ours() ? say("They are back with you.") : say("They are back with %s.", other);
    };
  }

  /** What was said so far, by which side and when; persons are named in each side's own history. */
  List<String> told(Lending one) {
    String lender = one.ours() ? say("You") : one.other().name();
    String borrower = one.ours() ? one.other().name() : say("You");
    List<String> told = new ArrayList<>();
    told.add(say("%s offered this on %s.%s", lender, moment(one.offeredAt()), quoted(one.note())));
    one.answeredAt()
        .forEach(
            at ->
                told.add(
                    switch (one.state()) {
                      case DECLINED ->
                          say("%s said no on %s.%s", borrower, moment(at), quoted(one.answer()));
                      case WITHDRAWN -> say("%s took the offer back on %s.", lender, moment(at));
                      default ->
                          say("%s said yes on %s.%s", borrower, moment(at), quoted(one.answer()));
                    }));
    one.endedAt()
        .forEach(
            at ->
                told.add(
                    say(
                        "%s said on %s that they are back.%s",
                        one.endedByUs() ? say("You") : one.other().name(),
                        moment(at),
                        quoted(one.ending()))));
    return told;
  }

  private String last(Lending one) {
    return Speech.dateAndYear(date(one.until().minusNanos(1)));
  }

  private String moment(Instant at) {
    return say("%1$s at %2$s", Speech.dateAndYear(date(at)), Speech.clock(at.atZone(zone)));
  }

  private LocalDate date(Instant at) {
    return at.atZone(zone).toLocalDate();
  }

  private static String quoted(String said) {
    return said.isEmpty() ? "" : " “%s”".formatted(said);
  }
}
