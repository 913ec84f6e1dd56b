package vestiary.users;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.password4j.Argon2Function;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Passwords as they are kept, judged and tried, without a server. */
class PasswordsTest {

  private static final List<String> KNOWN = List.of("ysolde", "Ysolde Hatherby", "Wenlow Valley");

  private final Passwords passwords = new Passwords();

  @Test
  void a_hash_says_how_it_was_made_and_knows_its_password_alone() {
    String hash = passwords.hash("candle nutmeg harbour eleven");

    assertTrue(hash.startsWith("$argon2id$v=19$m=19456,t=2,p=1$"), hash);
    assertTrue(passwords.matches("candle nutmeg harbour eleven", hash));
    assertFalse(passwords.matches("candle nutmeg harbour twelve", hash));
    assertFalse(passwords.matches("", hash));
    assertNotEquals(hash, passwords.hash("candle nutmeg harbour eleven"));
  }

  @Test
  void nobody_without_a_password_comes_in_by_any() {
    assertFalse(passwords.matches("", ""));
    assertFalse(passwords.matches("nobody", ""));
  }

  @Test
  void the_hash_of_nobody_costs_as_much_to_compare_as_one_that_is_kept() {
    Argon2Function kept = Argon2Function.getInstanceFromHash(passwords.hash("candle nutmeg"));
    String nobodys = HashOfNobody.make(kept, 16, 32);

    assertEquals(kept, Argon2Function.getInstanceFromHash(nobodys));
    assertEquals(passwords.hash("candle nutmeg").length(), nobodys.length());
    assertFalse(passwords.matches("candle nutmeg", nobodys));
    assertNotEquals(nobodys, HashOfNobody.make(kept, 16, 32));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "short",
        "password123",
        "qwertyuiop",
        "1234567890",
        "ysoldeysolde",
        "YsoldeHatherby1",
        "wenlow valley",
        "aaaaaaaaaaaa",
        "iloveyou2026"
      })
  void what_anybody_would_try_first_is_refused(String weak) {
    assertTrue(passwords.findFault(weak, KNOWN).isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"candle nutmeg harbour eleven", "vT9#qLw2!xRz", "öl-Kännchen Sieb Zug"})
  void what_nobody_guesses_is_taken(String strong) {
    assertEquals(List.of(), passwords.findFault(strong, KNOWN).stream().toList());
  }

  @Test
  void one_of_more_than_200_characters_is_refused_before_it_costs_anything() {
    assertTrue(passwords.findFault("x1 ".repeat(400), KNOWN).isPresent());
  }

  @Test
  void of_many_strangers_at_once_most_are_sent_away_and_nobody_known_waits_for_them()
      throws InterruptedException {
    int tries = 400;
    String hash = passwords.hash("candle nutmeg harbour eleven");
    AtomicInteger looked = new AtomicInteger();
    AtomicInteger sentAway = new AtomicInteger();
    CountDownLatch gate = new CountDownLatch(1);
    ExecutorService crowd = Executors.newFixedThreadPool(tries);
    for (int i = 0; i < tries; i++) {
      crowd.submit(
          () -> {
            gate.await();
            try {
              passwords.matchesOfStranger("wrong", hash);
              looked.incrementAndGet();
            } catch (Refused refused) {
              assertTrue(refused.refusal() instanceof Refusal.TooOften);
              sentAway.incrementAndGet();
            }
            return null;
          });
    }

    gate.countDown();
    crowd.shutdown();
    assertTrue(passwords.matches("candle nutmeg harbour eleven", hash));

    assertTrue(crowd.awaitTermination(1, TimeUnit.MINUTES));
    assertEquals(tries, looked.get() + sentAway.get());
    assertTrue(sentAway.get() > tries / 2, looked + " were looked at");
    assertTrue(looked.get() > 0);
  }
}
