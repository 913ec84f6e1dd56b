package vestiary.lending;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import vestiary.calendar.Term;
import vestiary.lending.ReadLendings.Lending;
import vestiary.vesting.PieceKind;
import vestiary.web.English;

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
      return "%s: %s %s"
          .formatted(codes.get(0), one.pieces().get(0).colours().get(0), kinds(one.pieces()));
    }
    return codes.size() <= 4
        ? English.list(codes)
        : "%s and %s more"
            .formatted(String.join(", ", codes.subList(0, 3)), English.count(codes.size() - 3));
  }

  private static String kinds(List<LentPiece> pieces) {
    return English.list(
        pieces.stream()
            .map(p -> Term.find(PieceKind.class, p.kind()).orElseThrow())
            .sorted()
            .map(kind -> kind.id().replace('-', ' '))
            .distinct()
            .toList());
  }

  /** "7 to 13 December 2026", both days included. */
  String days(Lending one) {
    LocalDate first = date(one.from());
    LocalDate last = date(one.until().minusNanos(1));
    return last.isAfter(first) ? English.span(first, last) : English.dateAndYear(first);
  }

  String over(Lending one) {
    if (one.ours()) {
      return one.state() == LendingState.OFFERED
          ? "Offered to " + one.other().name()
          : "Lent to " + one.other().name();
    }
    return one.state() == LendingState.OFFERED
        ? "Offered by " + one.other().name()
        : "Borrowed from " + one.other().name();
  }

  /** How it stands, in a sentence. */
  String state(Lending one) {
    String other = one.other().name();
    if (one.overdue()) {
      return one.ours()
          ? "It should be back since %s, and nobody has said that it is.".formatted(last(one))
          : "It should have gone back on %s, and nobody has said that it has.".formatted(last(one));
    }
    return switch (one.state()) {
      case OFFERED ->
          one.ours()
              ? "%s has not answered yet; until then you use these pieces as ever.".formatted(other)
              : "%s waits for your yes or no.".formatted(other);
      case ACCEPTED ->
          one.ours()
              ? "%s has them for these days; here they count as away.".formatted(other)
              : "You have them for these days, and they are counted with your own.";
      case DECLINED ->
          one.ours() ? "%s does not need them.".formatted(other) : "You did not need them.";
      case WITHDRAWN ->
          one.ours() ? "You took the offer back." : "%s took the offer back.".formatted(other);
      case RETURNED ->
          one.ours() ? "They are back with you." : "They are back with %s.".formatted(other);
    };
  }

  /** What was said so far, by which side and when; persons are named in each side's own history. */
  List<String> told(Lending one) {
    String lender = one.ours() ? "You" : one.other().name();
    String borrower = one.ours() ? one.other().name() : "You";
    List<String> told = new ArrayList<>();
    told.add(
        "%s offered this on %s.%s".formatted(lender, moment(one.offeredAt()), quoted(one.note())));
    one.answeredAt()
        .forEach(
            at ->
                told.add(
                    switch (one.state()) {
                      case DECLINED ->
                          "%s said no on %s.%s"
                              .formatted(borrower, moment(at), quoted(one.answer()));
                      case WITHDRAWN ->
                          "%s took the offer back on %s.".formatted(lender, moment(at));
                      default ->
                          "%s said yes on %s.%s"
                              .formatted(borrower, moment(at), quoted(one.answer()));
                    }));
    one.endedAt()
        .forEach(
            at ->
                told.add(
                    "%s said on %s that they are back.%s"
                        .formatted(
                            one.endedByUs() ? "You" : one.other().name(),
                            moment(at),
                            quoted(one.ending()))));
    return told;
  }

  private String last(Lending one) {
    return English.dateAndYear(date(one.until().minusNanos(1)));
  }

  private String moment(Instant at) {
    return "%s at %s".formatted(English.dateAndYear(date(at)), English.clock(at.atZone(zone)));
  }

  private LocalDate date(Instant at) {
    return at.atZone(zone).toLocalDate();
  }

  private static String quoted(String said) {
    return said.isEmpty() ? "" : " “%s”".formatted(said);
  }
}
