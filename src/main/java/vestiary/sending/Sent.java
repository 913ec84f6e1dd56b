package vestiary.sending;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * One piece that went out, and how it came back.
 *
 * @param sending id shared by all that went with it
 * @param item code of the set or piece that was sent
 * @param code of the piece
 * @param what it was, in the words of the record
 * @param loan whether its owner is another than the borrower
 * @param churches where it went, or none if outside the cluster
 * @param whom who has it outside the cluster; else empty
 * @param borrower the parish of that church, or whom
 * @param masses the Mass it went for, or none
 * @param carriers who carried it, by id, or none said
 * @param signers who signed for it there, by id, or none said
 * @param sentBy who noted it, as the history of changes knows them
 * @param returns how it came back, or none while it is out
 * @param version counts what was said of it, to notice a lost race
 */
public record Sent(
    UUID sending,
    String item,
    String code,
    String what,
    String owner,
    boolean loan,
    List<ChurchId> churches,
    String whom,
    String borrower,
    List<MassId> masses,
    Instant went,
    Instant due,
    List<UUID> carriers,
    List<UUID> signers,
    String sentBy,
    String condition,
    List<Return> returns,
    int version) {

  public Sent {
    churches = List.copyOf(churches);
    masses = List.copyOf(masses);
    carriers = List.copyOf(carriers);
    signers = List.copyOf(signers);
    returns = List.copyOf(returns);
  }

  /**
   * How it came back.
   *
   * @param church where it was taken in
   * @param takers who took it in, by id, or none said
   * @param notedBy who noted it, as the history of changes knows them
   */
  public record Return(
      Instant at, ChurchId church, List<UUID> takers, String notedBy, String condition) {
    public Return {
      takers = List.copyOf(takers);
    }
  }

  /** Empty while it is out. */
  public Optional<Return> findReturn() {
    return returns.stream().findFirst();
  }

  public boolean isOut() {
    return returns.isEmpty();
  }

  public boolean isOverdue(Instant now) {
    return isOut() && !due.isAfter(now);
  }

  /** Whole days on the calendar since it was due, 0 or more; 0 for what is not overdue. */
  public int daysOverdue(Instant now, ZoneId zone) {
    if (!isOverdue(now)) {
      return 0;
    }
    return (int) ChronoUnit.DAYS.between(dueDate(zone), LocalDate.ofInstant(now, zone));
  }

  /** The last day on which it may still come back; midnight ends a day and begins none. */
  public LocalDate dueDate(ZoneId zone) {
    return LocalDate.ofInstant(due.minus(Duration.ofNanos(1)), zone);
  }

  static Sent of(SentPieceRows.Both both) {
    SentPieceRow piece = both.piece();
    SendingRow sending = both.sending();
    return new Sent(
        sending.id,
        sending.item,
        piece.code,
        piece.what,
        piece.owner,
        piece.loan,
        Stream.ofNullable(sending.churchId).map(ChurchId::new).toList(),
        sending.whom,
        sending.borrower,
        Stream.ofNullable(sending.massId).map(MassId::new).toList(),
        sending.wentAt,
        sending.due,
        Stream.ofNullable(sending.carrierId).toList(),
        Stream.ofNullable(sending.signerId).toList(),
        sending.sentBy,
        sending.condition.isEmpty() ? piece.conditionOut : sending.condition,
        piece.backAt == null ? List.of() : List.of(back(piece)),
        sending.version + piece.version);
  }

  private static Return back(SentPieceRow piece) {
    return new Return(
        piece.backAt,
        new ChurchId(piece.backId),
        Stream.ofNullable(piece.takerId).toList(),
        piece.takenInBy,
        piece.conditionBack);
  }
}
