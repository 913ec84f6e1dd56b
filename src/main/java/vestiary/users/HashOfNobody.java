package vestiary.users;

import com.password4j.Argon2Function;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Locale;

/**
 * A hash that no password is known to have, in the form of those that are kept: salt and hash are
 * drawn, since to work one out at every start would take a quarter of a second for nothing.
 */
final class HashOfNobody {

  private static final Base64.Encoder BASE64 = Base64.getEncoder().withoutPadding();

  private HashOfNobody() {}

  /**
   * Makes another one each time.
   *
   * @param argon2 whose parameters it names, so that it takes as long to compare as any other
   */
  static String make(Argon2Function argon2, int saltBytes, int hashBytes) {
    return "$argon2%s$v=%d$m=%d,t=%d,p=%d$%s$%s"
        .formatted(
            argon2.getVariant().name().toLowerCase(Locale.ROOT),
            argon2.getVersion(),
            argon2.getMemory(),
            argon2.getIterations(),
            argon2.getParallelism(),
            drawn(saltBytes),
            drawn(hashBytes));
  }

  private static String drawn(int bytes) {
    byte[] drawn = new byte[bytes];
    new SecureRandom().nextBytes(drawn);
    return BASE64.encodeToString(drawn);
  }
}
