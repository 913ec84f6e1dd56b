package vestiary.plan;

import java.util.function.BooleanSupplier;

/** A question to the database that is asked far too often: between two looks the answer stands. */
final class SeldomAsked implements BooleanSupplier {

  private static final long PAUSE_NANOS = 300_000_000;

  private final BooleanSupplier question;
  private long askedAt;
  private boolean answer;

  SeldomAsked(BooleanSupplier question) {
    this.question = question;
    this.askedAt = System.nanoTime() - PAUSE_NANOS;
  }

  @Override
  public boolean getAsBoolean() {
    long now = System.nanoTime();
    if (!answer && now - askedAt >= PAUSE_NANOS) {
      askedAt = now;
      answer = question.getAsBoolean();
    }
    return answer;
  }
}
