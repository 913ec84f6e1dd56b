package vestiary.inventory;

import java.math.BigDecimal;
import java.time.Instant;

/**
 * What somebody said a piece is worth.
 *
 * @param currency ISO 4217, for example USD
 * @param basis whose estimate it is, or what it was bought for; may be empty
 */
public record Valuation(BigDecimal amount, String currency, String basis, Instant at) {

  static Valuation of(ValueRow row) {
    return new Valuation(row.amount, row.currency, row.basis, row.valuedAt);
  }

  /** For example "1,500.00 USD". */
  String words() {
    return "%,.2f %s".formatted(amount, currency);
  }
}
