package vestiary.schedule;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import vestiary.cluster.Cluster;
import vestiary.problem.Asked;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Speech;

/**
 * In which language a Mass is. The first of the cluster is meant unless another is said, and is
 * kept as nothing said.
 */
public final class MassLanguage {

  private static final int LONGEST = 35;

  private MassLanguage() {}

  /** The tag that was asked for, or "" for the usual; another than the cluster's is a fault. */
  static String read(String given, Cluster here, Asked asked) {
    String said = asked.text("language", given, LONGEST);
    if (said.isEmpty()) {
      return "";
    }
    List<String> known = here.languages().stream().map(Locale::toLanguageTag).toList();
    String tag = Locale.forLanguageTag(said).toLanguageTag();
    if (!known.contains(tag)) {
      asked.fault(
          "language",
          say(
              "language \"%s\" is none of this cluster, which has %s. An administrator adds one under the cluster's own page.",
              said, String.join(", ", known)));
    }
    return tag.equals(known.get(0)) ? "" : tag;
  }

  /** What a form offers: nothing where the cluster has one language alone. */
  static Choice choice(Entries input, Cluster here) {
    return here.languages().size() < 2
        ? Choice.of(List.of())
        : input.choice(
            "language",
            Stream.concat(
                Stream.of(Choice.Option.of("", say("%s, as usual", name(here.language())))),
                here.languages().stream()
                    .skip(1)
                    .map(one -> Choice.Option.of(one.toLanguageTag(), name(one)))));
  }

  /** For example "in Spanish"; empty for a Mass in the usual language. */
  public static String words(DatedMass mass) {
    String tag = mass.chosen().language();
    return tag.isEmpty() ? "" : say("in %s", name(Locale.forLanguageTag(tag)));
  }

  private static String name(Locale language) {
    return language.getDisplayLanguage(Speech.localeOr(Locale.ENGLISH));
  }
}
