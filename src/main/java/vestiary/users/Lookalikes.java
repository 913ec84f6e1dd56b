package vestiary.users;

import static vestiary.web.Speech.say;

import com.ibm.icu.text.SpoofChecker;
import jakarta.enterprise.context.ApplicationScoped;
import java.text.Normalizer;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Keeps anybody from coming in under a name that others read as somebody else's.
 *
 * <p>Source: Unicode Technical Standard 39, 4 (confusable detection) and 5.2 (restriction levels),
 * with the tables of the ICU library.
 */
@ApplicationScoped
class Lookalikes {

  private final SpoofChecker checker =
      new SpoofChecker.Builder()
          .setChecks(SpoofChecker.CONFUSABLE | SpoofChecker.RESTRICTION_LEVEL)
          .setRestrictionLevel(SpoofChecker.RestrictionLevel.HIGHLY_RESTRICTIVE)
          .build();

  /**
   * What is wrong with a name that somebody is to sign in by; empty if nothing is.
   *
   * @param others names that are others' already
   */
  Optional<String> findFault(String login, List<String> others) {
    if (checker.failsChecks(login)) {
      return Optional.of(say("\"%s\" mixes letters of several scripts; write it in one.", login));
    }
    Set<String> shapes = shapes(login);
    return others.stream()
        .filter(other -> !other.equalsIgnoreCase(login))
        .filter(other -> !Collections.disjoint(shapes, shapes(other)))
        .findFirst()
        .map(
            other -> say("\"%s\" looks just like \"%s\", which is somebody else's.", login, other));
  }

  /** As it is written, in small and in capital letters; alike for two that look alike in one. */
  private Set<String> shapes(String login) {
    String plain = Normalizer.normalize(login, Normalizer.Form.NFKC);
    return Stream.of(plain, plain.toLowerCase(Locale.ROOT), plain.toUpperCase(Locale.ROOT))
        .map(written -> checker.getSkeleton(written).toLowerCase(Locale.ROOT))
        .collect(Collectors.toSet());
  }
}
