package vestiary.lending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.cluster.ReadCluster;
import vestiary.pool.FindLendable;
import vestiary.problem.Asked;
import vestiary.problem.Refused;

/** Offers pieces to another cluster for a time. Until that says yes, they stay in use here. */
@ApplicationScoped
public class OfferPieces {

  private static final int LONGEST_NOTE = 1_000;
  private static final int LONGEST_DAYS = 366;
  private static final int MOST_PIECES = 200;
  private static final int MOST_CODES = 200;

  private final LendingRows rows;
  private final FindLendable lendable;
  private final ReadCluster cluster;
  private final Clusters clusters;
  private final CurrentCluster current;
  private final Clock clock;

  OfferPieces(
      LendingRows rows,
      FindLendable lendable,
      ReadCluster cluster,
      Clusters clusters,
      CurrentCluster current,
      Clock clock) {
    this.rows = rows;
    this.lendable = lendable;
    this.cluster = cluster;
    this.clusters = clusters;
    this.current = current;
    this.clock = clock;
  }

  /**
   * An offer as it was typed.
   *
   * @param to word of the cluster that is to have them
   * @param from first day, as 2026-12-08
   * @param until last day, included
   * @param pieces codes of pieces or sets, one or more
   * @param ownersAsked whether the owners who want to be asked have said yes
   */
  public record Request(
      String to,
      String from,
      String until,
      List<String> pieces,
      Boolean ownersAsked,
      String note) {}

  /**
   * Offers them.
   *
   * @return the id of the lending
   * @throws Refused if a field is unfit, or a piece cannot be lent in that time
   */
  @Transactional
  public UUID offer(Request request) {
    Asked asked = new Asked();
    LendingRow row = new LendingRow();
    row.clusterId = current.id();
    row.note = asked.text("note", request.note(), LONGEST_NOTE);
    row.offeredAt = clock.instant();
    fillBorrower(row, request.to(), asked);
    fillSpan(row, request, asked);
    fillPieces(row, request, asked);
    asked.refuseIfFaulty();
    rows.persistAndFlush(row);
    return row.id;
  }

  private void fillBorrower(LendingRow row, String to, Asked asked) {
    String word = asked.needed("to", to, MOST_CODES);
    Optional<UUID> borrower = clusters.find(word);
    if (borrower.isEmpty() && !word.isEmpty()) {
      asked.fault("to", say("No cluster of this server has the word \"%s\".", word));
    }
    if (borrower.filter(current.id()::equals).isPresent()) {
      asked.fault("to", say("This is your own cluster; among its churches nothing need be lent."));
    }
    row.borrowerId = borrower.orElse(null);
  }

  private void fillSpan(LendingRow row, Request request, Asked asked) {
    LocalDate first = asked.date("from", request.from());
    LocalDate last = asked.date("until", request.until());
    ZoneId zone = cluster.cluster().zone();
    row.starts = first.atStartOfDay(zone).toInstant();
    row.ends = last.plusDays(1).atStartOfDay(zone).toInstant();
    if (asked.isFaulty()) {
      return;
    }
    if (last.isBefore(first)) {
      asked.fault("until", say("It ends on %s, before it begins on %s.", last, first));
    } else if (first.plusDays(LONGEST_DAYS).isBefore(last)) {
      asked.fault("until", say("It is longer than %d days.", LONGEST_DAYS));
    } else if (!row.ends.isAfter(clock.instant())) {
      asked.fault("until", say("until %s lies in the past.", last));
    }
  }

  private void fillPieces(LendingRow row, Request request, Asked asked) {
    List<String> codes =
        Stream.ofNullable(request.pieces())
            .flatMap(List::stream)
            .filter(Objects::nonNull)
            .map(String::strip)
            .filter(code -> !code.isEmpty())
            .distinct()
            .toList();
    if (codes.isEmpty()) {
      asked.fault("pieces", say("Say which pieces or sets are offered."));
    } else if (codes.size() > MOST_CODES) {
      asked.fault("pieces", say("More than %d at once; offer them in parts.", MOST_CODES));
    }
    if (asked.isFaulty()) {
      return;
    }
    boolean ownersAsked = Boolean.TRUE.equals(request.ownersAsked());
    Instant from = row.starts;
    row.pieces =
        lendable.find(codes, from, row.ends, ownersAsked, asked).stream()
            .map(LentPiece::of)
            .toList();
    if (row.pieces.size() > MOST_PIECES) {
      asked.fault("pieces", say("More than %d at once; offer them in parts.", MOST_PIECES));
    }
  }
}
