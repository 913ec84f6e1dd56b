package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.CareKind;
import vestiary.pool.MovePiece;
import vestiary.pool.PutInCare;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;
import vestiary.web.Speech;

/** Does what a difference asks for, and says so in its line. */
@ApplicationScoped
@Transactional
public class SettleDifference {

  private final TakeStock stock;
  private final ReadStocktakes read;
  private final StocktakeLineRows lines;
  private final ReadPool pool;
  private final PutInCare care;
  private final MovePiece move;
  private final ReadCluster cluster;
  private final Clock clock;

  SettleDifference(
      TakeStock stock,
      ReadStocktakes read,
      StocktakeLineRows lines,
      ReadPool pool,
      PutInCare care,
      MovePiece move,
      ReadCluster cluster,
      Clock clock) {
    this.stock = stock;
    this.read = read;
    this.lines = lines;
    this.pool = pool;
    this.care = care;
    this.move = move;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * Settles one.
   *
   * @param code of the piece
   * @param how a {@link Settling} that fits what was found
   * @throws Refused if the piece is no open difference of this stocktake, or that does not fit it
   */
  public void settle(String id, String code, String how) {
    StocktakeRow stocktake = stock.open(id);
    Asked asked = new Asked();
    asked.needed("how", how, 40);
    Optional<Settling> chosen = asked.findTerm(Settling.class, "how", how);
    asked.refuseIfFaulty();
    StocktakeLine line =
        read.get(id).lines().stream()
            .filter(one -> one.code().equalsIgnoreCase(code) && one.isDifference())
            .findFirst()
            .orElseThrow(() -> new Refused(new Refusal.NotThere("difference", code)));
    if (!line.isOpen()) {
      return;
    }
    if (!Settling.of(line).contains(chosen.orElseThrow())) {
      throw new Refused(
          Refusal.Unfit.of(
              "how", say("%s is %s; that is settled otherwise.", line.code(), seen(line))));
    }
    UUID piece = pool.id(line.code());
    lines.findLocked(stocktake.id, piece).orElseThrow().settled =
        done(line, chosen.get(), new ChurchId(stocktake.churchId));
    lines.flush();
  }

  private static String seen(StocktakeLine line) {
    return StocktakeWords.seen(line);
  }

  private String done(StocktakeLine line, Settling how, ChurchId here) {
    return switch (how) {
      case MARK_MISSING -> {
        care.put(line.code(), request(CareKind.MISSING, line.note()));
        yield Speech.word("Missing; out of the pool until it is found.");
      }
      case IN_CARE -> {
        String what = line.note().isEmpty() ? "Damaged, as the stocktake found" : line.note();
        care.put(line.code(), request(CareKind.OTHER, what));
        yield Speech.word("Put in care.");
      }
      case NEW_PLACE -> {
        move.toPlace(line.code(), line.note());
        yield line.note().isEmpty()
            ? Speech.word("Its place is not known.")
            : "Its place is now: " + line.note() + ".";
      }
      case STAYS_HERE -> {
        move.toChurch(line.code(), here);
        yield Speech.word("At home here from now on.");
      }
      case SEND_HOME -> "Taken home to %s.".formatted(home(line.code()));
      case PUT_RIGHT -> Speech.word("Put right on the spot.");
    };
  }

  private PutInCare.Request request(CareKind kind, String reason) {
    OffsetDateTime now = OffsetDateTime.now(clock.withZone(cluster.cluster().zone()));
    return new PutInCare.Request(now.toString(), null, reason, kind.id());
  }

  private String home(String code) {
    ChurchId home = pool.get(code).home();
    return cluster.churches().stream()
        .filter(church -> church.id().equals(home))
        .map(Church::name)
        .findFirst()
        .orElseThrow();
  }
}
