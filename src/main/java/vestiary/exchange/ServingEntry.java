package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import vestiary.schedule.ServesAs;
import vestiary.serving.NameServing;

/**
 * Somebody who serves at one Mass.
 *
 * @param person key of the person
 * @param role id of a {@link ServesAs}; empty for what the person usually is
 */
record ServingEntry(String person, String role) {

  private static final Words ROLES = Words.of(ServesAs.class);

  private static final Pattern FORM = Pattern.compile("([^:]+?)(?: *: *([\\p{L}-]+))?");

  /** What may stand there, as a sentence. */
  static String wanted() {
    return say(
        "Write the key of a person and, where it is not the usual one, a colon and the role (%s), for example odo-larkspire:reader.",
        ROLES);
  }

  /** The entry written so, or empty if it is not understood. */
  static Optional<ServingEntry> find(String entry) {
    Matcher form = FORM.matcher(entry);
    if (!form.matches()) {
      return Optional.empty();
    }
    Optional<String> person = Form.KEY.find(form.group(1));
    return form.group(2) == null
        ? person.map(key -> new ServingEntry(key, ""))
        : person.flatMap(key -> ROLES.find(form.group(2)).map(role -> new ServingEntry(key, role)));
  }

  NameServing.Wanted toWanted() {
    return new NameServing.Wanted(person, role);
  }
}
