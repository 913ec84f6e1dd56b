package vestiary.users;

import static vestiary.web.Speech.say;

import com.nulabinc.zxcvbn.Zxcvbn;
import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Hashes passwords, which is slow by intention, so only a few at a time: however many are tried,
 * the machine stays free for those who look at pages. Strangers have turns of their own, and a
 * crowd of them is slowed, so that nobody who is known here waits for them.
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

  /** A quarter of one processor is what a crowd of strangers gets. */
  private static final int REST = 3;

  private final Turns known = new Turns(AT_A_TIME, 0);
  private final Turns strangers = new Turns(1, REST);
  private final Zxcvbn strength = new Zxcvbn();
  private final Argon2Function argon2 =
      Argon2Function.getInstance(KIBIBYTES, PASSES, LANES, HASH_BYTES, Argon2.ID);

  /** Nobody’s, so that a name that is not known takes as long as one that is. */
  private final String nobodys = HashOfNobody.make(argon2, SALT_BYTES, HASH_BYTES);

  /** The hash with its salt and parameters, as PHC strings are written. */
  public String hash(String password) {
    return known.take(
        () -> Password.hash(password).addRandomSalt(SALT_BYTES).with(argon2).getResult());
  }

  /**
   * Whether it is the password of somebody who is known here: they are signed in, or their browser
   * is one they came in by before.
   *
   * @param hash empty if there is none, which takes just as long to say no to
   */
  public boolean matches(String password, String hash) {
    return matches(password, hash, known);
  }

  /** Whether it is the password, tried from a browser that nobody knows. */
  boolean matchesOfStranger(String password, String hash) {
    return matches(password, hash, strangers);
  }

  /**
   * Looks before a stranger's try costs anything.
   *
   * @throws vestiary.problem.Refused if too many strangers wait already
   */
  void refuseIfCrowded() {
    strangers.refuseIfCrowded();
  }

  /** Whether too many strangers wait already. */
  boolean isCrowded() {
    return strangers.isCrowded();
  }

  private boolean matches(String password, String hash, Turns turns) {
    String kept = hash.isEmpty() ? nobodys : hash;
    boolean same =
        turns.take(
            () ->
                Password.check(cut(password), kept).with(Argon2Function.getInstanceFromHash(kept)));
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
          say(
              "The password has %d characters; it must have %d to %d. Three or four words that do not belong together are good.",
              password.length(), SHORTEST, LONGEST));
    }
    String measured = password.substring(0, Math.min(password.length(), MEASURED));
    return strength.measure(measured, parts(known)).getScore() < STRONG_ENOUGH
        ? Optional.of(
            say(
                "This password is too easy to guess. Take three or four words that do not belong together, and none of your own names."))
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
}
