package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
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

/**
 * Takes a piece out of use for a time. Plans and holds it breaks stand no longer: a report of
 * damage is never refused.
 */
@ApplicationScoped
@Transactional
public class PutInCare {

  private static final int LONGEST_REASON = 300;
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2301;

  /** Beyond every date that the calendar knows, and within those that the database does. */
  private static final Instant FAR_AHEAD = Instant.parse("9999-12-31T00:00:00Z");

  private final PieceRows pieces;
  private final SetRows sets;
  private final OccupationRows occupations;
  private final MovementRows movements;
  private final ReadCluster cluster;
  private final Clock clock;
  private final CurrentVisitor visitor;

  PutInCare(
      PieceRows pieces,
      SetRows sets,
      OccupationRows occupations,
      MovementRows movements,
      ReadCluster cluster,
      Clock clock,
      CurrentVisitor visitor) {
    this.visitor = visitor;
    this.pieces = pieces;
    this.sets = sets;
    this.occupations = occupations;
    this.movements = movements;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * Care as it was typed.
   *
   * @param from first date, or a date and time
   * @param to last date, or the date and time it is over; not given: until further notice
   */
  public record Request(String from, String to, String reason) {}

  /**
   * What is wrong with a request; empty if it can be kept. Nothing is changed.
   *
   * @param piece code of the piece; empty if a set is meant
   * @param set code of the set; empty if a piece is meant
   */
  public List<FieldFault> findFaults(String piece, String set, Request request) {
    Asked asked = new Asked();
    if (!piece.isEmpty() && pieces.findByCode(piece).isEmpty()) {
      asked.fault("piece", "piece \"%s\" is not in the pool.".formatted(piece));
    }
    if (!set.isEmpty() && sets.findByCode(set).isEmpty()) {
      asked.fault("set", "set \"%s\" is not in the pool.".formatted(set));
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
    pieces.list("setId = ?1 order by code", id).forEach(p -> putOrChange(p.code, request));
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

  /**
   * Ends care: what has not begun is struck out, what goes on ends now, what is over stays.
   *
   * @throws Refused if the piece has no such care
   */
  public void end(String code, String id) {
    PieceRow piece = pieces.getByCode(code);
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, piece.homeId);
    OccupationRow row =
        Optional.ofNullable(occupations.findById(Asked.id("care", id)))
            .filter(o -> o.pieceId.equals(piece.id) && o.state.equals(OccupationRow.CARE))
            .orElseThrow(() -> new Refused(new Refusal.NotThere("care", id)));
    LentPieces.refuseIfOfLending(row, piece);
    Instant now = clock.instant();
    if (!row.starts.isBefore(now)) {
      occupations.delete(row);
    } else if (row.ends == null || row.ends.isAfter(now)) {
      row.ends = now;
    }
    occupations.flush();
  }

  private void keep(OccupationRow row, PieceRow piece, Request request) {
    Asked asked = new Asked();
    fill(row, request, asked);
    asked.refuseIfFaulty();
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, piece.homeId);
    row.pieceId = piece.id;
    row.state = OccupationRow.CARE;
    refuseIfInCareAlready(row, piece);
    occupations.displace(piece.id, row.starts, row.ends == null ? FAR_AHEAD : row.ends);
    occupations.persistAndFlush(row);
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
                      "%s is in care already from %s%s: %s. Change that first."
                          .formatted(piece.code, date(o.starts), until(o), o.reason)));
            });
  }

  private static boolean overlaps(OccupationRow a, OccupationRow b) {
    return (a.ends == null || a.ends.isAfter(b.starts))
        && (b.ends == null || b.ends.isAfter(a.starts));
  }

  private String until(OccupationRow row) {
    return row.ends == null ? " until further notice" : " to " + date(row.ends.minusSeconds(1));
  }

  private LocalDate date(Instant moment) {
    return moment.atZone(cluster.cluster().zone()).toLocalDate();
  }

  private void fill(OccupationRow row, Request request, Asked asked) {
    ZoneId zone = cluster.cluster().zone();
    String from = asked.needed("from", request.from(), LONGEST_REASON);
    String to = asked.text("to", request.to());
    row.reason = asked.needed("reason", request.reason(), LONGEST_REASON);
    row.starts = from.isEmpty() ? Instant.EPOCH : moment("from", from, 0, zone, asked);
    row.ends = to.isEmpty() ? null : moment("to", to, 1, zone, asked);
    if (!asked.isFaulty() && row.ends != null && !row.ends.isAfter(row.starts)) {
      asked.fault("to", "It ends (%s) before it begins (%s).".formatted(to, from));
    }
  }

  /** A date means its first moment, or for an end the first of the day after. */
  private static Instant moment(
      String field, String text, int daysAfter, ZoneId zone, Asked asked) {
    try {
      ZonedDateTime time =
          text.contains("T")
              ? dateAndTime(text, zone)
              : LocalDate.parse(text).plusDays(daysAfter).atStartOfDay(zone);
      if (time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR) {
        return time.toInstant();
      }
      asked.fault(field, "%s %s lies too far away.".formatted(field, text));
    } catch (DateTimeParseException e) {
      asked.fault(
          field,
          "%s \"%s\" is no date; write it as 2026-12-08, or 2026-12-08T18:30."
              .formatted(field, text));
    } catch (DateTimeException beyondAllDates) {
      asked.fault(field, "%s %s lies too far away.".formatted(field, text));
    }
    return Instant.EPOCH;
  }

  private static ZonedDateTime dateAndTime(String text, ZoneId zone) {
    return Asked.hasOffset(text)
        ? OffsetDateTime.parse(text).atZoneSameInstant(zone)
        : LocalDateTime.parse(text).atZone(zone);
  }
}
