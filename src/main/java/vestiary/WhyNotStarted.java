package vestiary;

import io.quarkus.runtime.QuarkusBindException;
import java.sql.SQLException;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.problem.Refused;

/** What whoever starts the server can do about a start that failed. */
final class WhyNotStarted {

  /** SQLSTATE class 08, "connection exception", of ISO/IEC 9075 (SQL). */
  private static final String NO_CONNECTION = "08";

  private WhyNotStarted() {}

  /** One sentence; empty if the fault is none that the person there could mend. */
  static Optional<String> find(Throwable fault) {
    return Stream.iterate(fault, Objects::nonNull, Throwable::getCause)
        .map(WhyNotStarted::sentence)
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Whether the database could not be reached at all. */
  static boolean isNoConnection(SQLException failure) {
    return Objects.requireNonNullElse(failure.getSQLState(), "").startsWith(NO_CONNECTION);
  }

  private static Optional<String> sentence(Throwable cause) {
    if (cause instanceof QuarkusBindException taken) {
      return Optional.of(
          "Port %d is in use by another program, perhaps by a Vestiary that runs already. Use that one, stop it first, or name another port in QUARKUS_HTTP_PORT."
              .formatted(taken.getPort()));
    }
    if (cause instanceof SQLException sql && isNoConnection(sql)) {
      return Optional.of(
          "The PostgreSQL in QUARKUS_DATASOURCE_JDBC_URL does not answer: %s Start it, or look at that address."
              .formatted(sql.getMessage()));
    }
    if (cause instanceof Refused refused) {
      return Optional.of(refused.refusal().detail());
    }
    return Optional.empty();
  }
}
