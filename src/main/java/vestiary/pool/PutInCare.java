package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.problem.TypedMoment;

/**
 * Takes a piece out of use for a time. Plans and holds it breaks stand no longer: a report of
 * damage is never refused.
 */
@ApplicationScoped
@Transactional
public class PutInCare {

  private static final int LONGEST_REASON = 300;

  /** A cleaner takes five to ten working days; fourteen are safe (common practice, no source). */
  private static final int CLEANER_DAYS = 14;

  private final PieceRows pieces;
  private final SetRows sets;
  private final OccupationRows occupations;
  private final MovementRows movements;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final Clock clock;

  PutInCare(
      PieceRows pieces,
      SetRows sets,
      OccupationRows occupations,
      MovementRows movements,
      ReadCluster cluster,
      CurrentVisitor visitor,
      Clock clock) {
    this.clock = clock;
    this.visitor = visitor;
    this.pieces = pieces;
    this.sets = sets;
    this.occupations = occupations;
    this.movements = movements;
    this.cluster = cluster;
  }

  /**
   * Care as it was typed.
   *
   * @param from first date, or a date and time
   * @param to last date, or the date and time it is over; not given: until further notice, or as
   *     long as a cleaner takes
   * @param reason in words; may be left out where a kind says it
   * @param kind what is wrong with it; with it the piece is away until somebody says it is back
   */
  public record Request(String from, String to, String reason, String kind) {

    /** Nobody says what is wrong with it; it is over when it ends. */
    public Request(String from, String to, String reason) {
      this(from, to, reason, null);
    }
  }

  /**
   * What is wrong with a request; empty if it can be kept. Nothing is changed.
   *
   * @param piece code of the piece; empty if a set is meant
   * @param set code of the set; empty if a piece is meant
   */
  public List<FieldFault> findFaults(String piece, String set, Request request) {
    Asked asked = new Asked();
    if (!piece.isEmpty() && pieces.findByCode(piece).isEmpty()) {
      asked.fault("piece", say("piece \"%s\" is not in the pool.", piece));
    }
    if (!set.isEmpty() && sets.findByCode(set).isEmpty()) {
      asked.fault("set", say("set \"%s\" is not in the pool.", set));
    }
    fill(new OccupationRow(), request, asked);
    return asked.faults();
  }

  /** Forgets all care, past and to come, and all plans, for a demo that is made anew. */
  public void forgetAll() {
    occupations.deleteAll();
    movements.deleteAll();
  }

  /**
   * Puts one piece in care.
   *
   * @throws Refused if there is none of that code, a field is unfit, or it is in care already
   */
  public Care put(String code, Request request) {
    PieceRow piece = pieces.getByCode(code);
    OccupationRow row = new OccupationRow();
    keep(row, piece, request);
    return Care.of(row, piece.code);
  }

  /** Puts every piece of a set in care. */
  public void putSet(String set, Request request) {
    UUID id = sets.getByCode(set).id;
    pieces.ofSet(id).forEach(p -> putOrChange(p.code, request));
  }

  /** Puts a piece in care, or changes the care that begins then; so a list can be sent twice. */
  public void putOrChange(String code, Request request) {
    PieceRow piece = pieces.getByCode(code);
    OccupationRow given = new OccupationRow();
    Asked asked = new Asked();
    fill(given, request, asked);
    asked.refuseIfFaulty();
    OccupationRow row = occupations.findCare(piece.id, given.starts).orElse(given);
    LentPieces.refuseIfOfLending(row, piece);
    keep(row, piece, request);
  }

  private void keep(OccupationRow row, PieceRow piece, Request request) {
    Asked asked = new Asked();
    fill(row, request, asked);
    asked.refuseIfFaulty();
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, piece.homeId);
    row.pieceId = piece.id;
    row.state = OccupationRow.CARE;
    beginAfterWhatIsOver(row, piece);
    refuseIfInCareAlready(row, piece);
    List<OccupationRow> broken =
        occupations.displace(
            piece.id, row.starts, row.ends == null ? OccupationRows.FAR_AHEAD : row.ends);
    occupations.bringBack(row);
    occupations.persistAndFlush(row);
    broken.forEach(lost -> lost.brokenBy = row.id);
    occupations.flush();
  }

  /** What came back this morning can be found damaged this afternoon. */
  private void beginAfterWhatIsOver(OccupationRow row, PieceRow piece) {
    Instant now = clock.instant();
    Instant today = date(now).atStartOfDay(cluster.cluster().zone()).toInstant();
    if (row.starts.equals(today)) {
      row.starts =
          occupations.careOf(piece.id).stream()
              .filter(o -> !o.id.equals(row.id) && o.ends != null && !o.ends.isAfter(now))
              .map(o -> o.ends)
              .filter(end -> end.isAfter(today))
              .max(Instant::compareTo)
              .orElse(today);
    }
  }

  /** Says it in words; should two ask at the same moment, the database says no to one of them. */
  private void refuseIfInCareAlready(OccupationRow row, PieceRow piece) {
    occupations.careOf(piece.id).stream()
        .filter(o -> !o.id.equals(row.id) && overlaps(o, row))
        .findFirst()
        .ifPresent(
            o -> {
              throw new Refused(
                  new Refusal.Taken(
                      "from",
                      say(
                          "%s is in care already from %s%s: %s. Change that first.",
                          piece.code, date(o.starts), until(o), o.reason)));
            });
  }

  private static boolean overlaps(OccupationRow a, OccupationRow b) {
    return (a.ends == null || a.ends.isAfter(b.starts))
        && (b.ends == null || b.ends.isAfter(a.starts));
  }

  private String until(OccupationRow row) {
    return row.ends == null
        ? say(" until further notice")
        : say(" to ") + date(row.ends.minusSeconds(1));
  }

  private LocalDate date(Instant moment) {
    return moment.atZone(cluster.cluster().zone()).toLocalDate();
  }

  private void fill(OccupationRow row, Request request, Asked asked) {
    ZoneId zone = cluster.cluster().zone();
    String from = asked.needed("from", request.from(), LONGEST_REASON);
    String to = asked.text("to", request.to());
    Optional<CareKind> kind = asked.findTerm(CareKind.class, "kind", request.kind());
    row.careKind = kind.orElse(CareKind.OTHER).id();
    row.awaited = kind.isPresent();
    row.reason =
        kind.filter(k -> k != CareKind.OTHER).isPresent()
            ? otherwise(asked.text("reason", request.reason(), LONGEST_REASON), kind.get().words())
            : asked.needed("reason", request.reason(), LONGEST_REASON);
    row.starts = from.isEmpty() ? Instant.EPOCH : TypedMoment.read("from", from, 0, zone, asked);
    row.ends = to.isEmpty() ? null : TypedMoment.read("to", to, 1, zone, asked);
    if (to.isEmpty() && kind.filter(CareKind.CLEANER::equals).isPresent() && !asked.isFaulty()) {
      row.ends =
          row.starts
              .atZone(zone)
              .toLocalDate()
              .plusDays(CLEANER_DAYS + 1L)
              .atStartOfDay(zone)
              .toInstant();
    }
    row.promised = row.ends;
    if (!asked.isFaulty() && row.ends != null && !row.ends.isAfter(row.starts)) {
      asked.fault("to", say("It ends (%s) before it begins (%s).", to, from));
    }
  }

  private static String otherwise(String text, String otherwise) {
    return text.isEmpty() ? otherwise : text;
  }
}
