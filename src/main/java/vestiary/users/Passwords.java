package vestiary.users;

import com.nulabinc.zxcvbn.Zxcvbn;
import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.stream.Stream;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Hashes passwords, which is slow by intention, so only a few at a time: however many are tried,
 * the machine stays free for those who look at pages.
 *
 * <p>Source: RFC 9106 (Argon2id); its parameters, and the shortest and longest password, are those
 * of the OWASP Password Storage and Authentication Cheat Sheets.
 */
@ApplicationScoped
public class Passwords {

  static final int SHORTEST = 10;
  static final int LONGEST = 200;

  private static final int KIBIBYTES = 19_456;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int HASH_BYTES = 32;
  private static final int SALT_BYTES = 16;

  /** Of zxcvbn’s marks 0 to 4: "safely unguessable", from 10^8 guesses on. */
  private static final int STRONG_ENOUGH = 3;

  /** What lies beyond adds strength that need not be measured, and takes long. */
  private static final int MEASURED = 100;

  private static final int AT_A_TIME = Math.max(1, Runtime.getRuntime().availableProcessors() / 2);
  private static final int MOST_WAITING = 20;
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(5);

  private final Semaphore turns = new Semaphore(AT_A_TIME, true);
  private final Zxcvbn strength = new Zxcvbn();
  private final Argon2Function argon2 =
      Argon2Function.getInstance(KIBIBYTES, PASSES, LANES, HASH_BYTES, Argon2.ID);

  /** Nobody’s password, so that a name that is not known takes as long as one that is. */
  private final String nobodys =
      Password.hash("nobody").addRandomSalt(SALT_BYTES).with(argon2).getResult();

  /** The hash with its salt and parameters, as PHC strings are written. */
  public String hash(String password) {
    return inTurn(() -> Password.hash(password).addRandomSalt(SALT_BYTES).with(argon2).getResult());
  }

  /**
   * Whether it is the password.
   *
   * @param hash empty if there is none, which takes just as long to say no to
   */
  public boolean matches(String password, String hash) {
    String known = hash.isEmpty() ? nobodys : hash;
    boolean same =
        inTurn(
            () ->
                Password.check(cut(password), known)
                    .with(Argon2Function.getInstanceFromHash(known)));
    return same && !hash.isEmpty() && password.length() <= LONGEST;
  }

  /**
   * What is wrong with a password that somebody wants, or empty.
   *
   * @param known words that anybody would try first: the user's own names, the cluster's
   */
  Optional<String> findFault(String password, List<String> known) {
    if (password.length() < SHORTEST || password.length() > LONGEST) {
      return Optional.of(
          "The password has %d characters; it must have %d to %d. Three or four words that do not belong together are good."
              .formatted(password.length(), SHORTEST, LONGEST));
    }
    String measured = password.substring(0, Math.min(password.length(), MEASURED));
    return strength.measure(measured, parts(known)).getScore() < STRONG_ENOUGH
        ? Optional.of(
            "This password is too easy to guess. Take three or four words that do not belong together, and none of your own names.")
        : Optional.empty();
  }

  /** Names are tried whole, run together, and part by part. */
  private static List<String> parts(List<String> known) {
    return known.stream()
        .flatMap(
            words ->
                Stream.concat(
                    Stream.of(words, words.replaceAll("\\s+", "")), Stream.of(words.split("\\s+"))))
        .distinct()
        .toList();
  }

  private static String cut(String password) {
    return password.substring(0, Math.min(password.length(), LONGEST));
  }

  private <T> T inTurn(Supplier<T> work) {
    if (turns.getQueueLength() >= MOST_WAITING || !gotTurn()) {
      throw new Refused(new Refusal.TooOften(LONGEST_WAIT));
    }
    try {
      return work.get();
    } finally {
      turns.release();
    }
  }

  private boolean gotTurn() {
    try {
      return turns.tryAcquire(LONGEST_WAIT.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
