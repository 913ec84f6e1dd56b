package vestiary.people;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import vestiary.problem.Asked;
import vestiary.web.Speech;

/** Languages as people write them, "English, Polish", and as they are kept, "en" and "pl". */
final class Tongues {

  private static final List<Locale> WRITTEN_IN =
      List.of(Locale.ENGLISH, Locale.forLanguageTag("es"));

  private static final Map<String, String> BY_NAME = byName();

  private Tongues() {}

  /** In words, for example "English". */
  static String name(String tag) {
    return Locale.forLanguageTag(tag).getDisplayLanguage(Speech.localeOr(Locale.ENGLISH));
  }

  /** The tags of what was typed, each once; what is no language is noted as a fault. */
  static List<String> read(String field, List<String> typed, Asked asked) {
    List<String> tags = new ArrayList<>();
    for (String one : typed) {
      String said = asked.text(field, one).strip();
      Optional<String> tag = find(said);
      if (!said.isEmpty() && tag.isEmpty()) {
        asked.fault(
            field,
            say(
                "%s \"%s\" is no language that is known here; write it as in English, Spanish or Polish, with commas between.",
                field, said));
      }
      tag.filter(found -> !tags.contains(found)).ifPresent(tags::add);
    }
    return tags;
  }

  private static Optional<String> find(String said) {
    return Optional.ofNullable(BY_NAME.get(said.toLowerCase(Locale.ROOT)));
  }

  private static Map<String, String> byName() {
    Map<String, String> tags = new HashMap<>();
    for (String tag : Arrays.asList(Locale.getISOLanguages())) {
      WRITTEN_IN.forEach(
          in ->
              tags.put(
                  Locale.forLanguageTag(tag).getDisplayLanguage(in).toLowerCase(Locale.ROOT), tag));
    }
    Arrays.asList(Locale.getISOLanguages()).forEach(tag -> tags.put(tag, tag));
    return Map.copyOf(tags);
  }
}
