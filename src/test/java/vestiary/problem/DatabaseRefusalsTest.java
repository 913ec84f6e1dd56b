package vestiary.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

@QuarkusTest
class DatabaseRefusalsTest {

  /** More than the pool has. */
  private static final int TOO_MANY = 100;

  @Inject AgroalDataSource pool;

  @Test
  void whoever_gets_no_connection_in_time_is_told_to_wait_and_not_of_a_fault_of_ours()
      throws SQLException {
    List<Connection> taken = new ArrayList<>();
    try {
      SQLException none =
          assertThrows(
              SQLException.class,
              () -> {
                for (int i = 0; i < TOO_MANY; i++) {
                  taken.add(pool.getConnection());
                }
              });

      assertEquals(
          Optional.of(new Refusal.DatabaseAway()),
          DatabaseRefusals.find(new IllegalStateException(none)));
    } finally {
      for (Connection connection : taken) {
        connection.close();
      }
    }
  }
}
