package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Withdraws a piece from use: it leaves the pool, its page and its history stay.
 *
 * <p>Source: CIC 1283, 3°: every change is noted in the inventory, none is struck out of it.
 */
@ApplicationScoped
@Transactional
public class WithdrawPiece {

  private static final int LONGEST = 300;

  private final PieceRows pieces;
  private final OccupationRows occupations;
  private final LentPieces lent;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final Clock clock;

  WithdrawPiece(
      PieceRows pieces,
      OccupationRows occupations,
      LentPieces lent,
      ReadCluster cluster,
      CurrentVisitor visitor,
      Clock clock) {
    this.pieces = pieces;
    this.occupations = occupations;
    this.lent = lent;
    this.cluster = cluster;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * As it was typed.
   *
   * @param on a date; today if not given
   * @param reason why
   * @param to where it went; may be left out
   */
  public record Request(String on, String reason, String to) {}

  /**
   * Withdraws it; plans and holds that have it stand no longer.
   *
   * @return its code
   * @throws Refused if there is none of that code, a field is unfit, or it is lent or borrowed
   */
  public String withdraw(String code, Request request) {
    PieceRow row = own(code);
    lent.refuseIfLent(row);
    Asked asked = new Asked();
    Optional<LocalDate> on = asked.findDate("on", request.on());
    String reason = asked.needed("reason", request.reason(), LONGEST);
    String to = asked.text("to", request.to(), LONGEST);
    if (on.filter(day -> day.isAfter(today())).isPresent()) {
      asked.fault(
          "on", say("It is withdrawn on a day to come; write today or a day that is past."));
    }
    asked.refuseIfFaulty();
    row.withdrawnOn = on.orElse(today());
    row.withdrawnReason = reason;
    row.withdrawnTo = to;
    occupations.displace(row.id, clock.instant(), OccupationRows.FAR_AHEAD);
    pieces.flush();
    return row.code;
  }

  /**
   * Takes it back into use.
   *
   * @throws Refused if there is none of that code, or it is in use
   */
  public void takeBack(String code) {
    PieceRow row = own(code);
    if (row.withdrawnOn == null) {
      throw new Refused(new Refusal.NotThere("withdrawal of", code));
    }
    row.withdrawnOn = null;
    row.withdrawnReason = "";
    row.withdrawnTo = "";
    pieces.flush();
  }

  private PieceRow own(String code) {
    PieceRow row = pieces.getByCode(code);
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, row.homeId);
    LentPieces.refuseIfBorrowed(row);
    return row;
  }

  private LocalDate today() {
    ZoneId zone = cluster.cluster().zone();
    return LocalDate.now(clock.withZone(zone));
  }
}
