package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.CurrentVisitor;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.problem.Refused;

/**
 * What pieces are worth, which only those may see who answer for the goods.
 *
 * <p>Source: CIC 1283, 2°, asks for a valuation; that it is shown to few is common practice, no
 * source.
 */
@ApplicationScoped
@Transactional
public class ValuePiece {

  private static final int LONGEST = 300;
  private static final Set<String> CURRENCIES =
      Currency.getAvailableCurrencies().stream()
          .map(Currency::getCurrencyCode)
          .collect(Collectors.toUnmodifiableSet());

  private final ValueRows values;
  private final ReadPool pool;
  private final CurrentVisitor visitor;
  private final Clock clock;

  ValuePiece(ValueRows values, ReadPool pool, CurrentVisitor visitor, Clock clock) {
    this.values = values;
    this.pool = pool;
    this.visitor = visitor;
    this.clock = clock;
  }

  /** As it was typed. */
  public record Request(String amount, String currency, String basis) {}

  /**
   * Notes a value; earlier ones stay.
   *
   * @throws Refused if there is no such piece, or a field is unfit
   */
  public void value(String code, Request request) {
    UUID piece = pool.id(code);
    Asked asked = new Asked();
    ValueRow row = new ValueRow();
    row.pieceId = piece;
    row.amount = amount(asked.needed("amount", request.amount(), 20), asked);
    row.currency = asked.needed("currency", request.currency(), 3).toUpperCase(Locale.ROOT);
    if (!row.currency.isEmpty() && !CURRENCIES.contains(row.currency)) {
      asked.fault(
          "currency",
          say("currency \"%s\" is none; write its three letters, as in USD.", row.currency));
    }
    row.basis = asked.text("basis", request.basis(), LONGEST);
    asked.refuseIfFaulty();
    row.valuedAt = clock.instant();
    row.visitor = visitor.visitor().mark();
    values.persistAndFlush(row);
  }

  private static BigDecimal amount(String text, Asked asked) {
    if (text.isEmpty()) {
      return BigDecimal.ZERO;
    }
    if (!text.matches("\\d{1,9}(\\.\\d{1,2})?")) {
      asked.fault("amount", say("amount \"%s\" is no sum; write it as 1500 or 1500.00.", text));
      return BigDecimal.ZERO;
    }
    return new BigDecimal(text).setScale(2, RoundingMode.UNNECESSARY);
  }

  /**
   * What was said, newest first.
   *
   * @throws Refused if there is no such piece
   */
  public List<Valuation> of(String code) {
    return values.list("pieceId = ?1 order by valuedAt desc, id desc", pool.id(code)).stream()
        .map(Valuation::of)
        .toList();
  }

  /** The newest of every piece that has one, by its code. */
  Map<String, Valuation> newest() {
    Map<UUID, Valuation> newest = new HashMap<>();
    values.list("order by valuedAt, id").forEach(row -> newest.put(row.pieceId, Valuation.of(row)));
    Map<String, Valuation> byCode = new HashMap<>();
    pool.ids()
        .forEach(
            (code, id) -> Optional.ofNullable(newest.get(id)).ifPresent(v -> byCode.put(code, v)));
    return byCode;
  }
}
