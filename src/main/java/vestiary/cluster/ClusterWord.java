package vestiary.cluster;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.text.Normalizer;
import java.util.Locale;
import java.util.UUID;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refused;

/**
 * The short word of a cluster, once on the server: by it people say where they sign in, and other
 * clusters to whom they lend.
 */
@ApplicationScoped
public class ClusterWord {

  private static final int LONGEST = 40;
  private static final String FORM = "[a-z0-9]+(-[a-z0-9]+)*";

  /** An id is as good as a word, so no word may look like one. */
  private static final String ID = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final ClusterRows rows;
  private final Clusters clusters;
  private final CurrentCluster current;

  ClusterWord(ClusterRows rows, Clusters clusters, CurrentCluster current) {
    this.rows = rows;
    this.clusters = clusters;
    this.current = current;
  }

  /** Until somebody has chosen one. */
  static String until(UUID cluster) {
    return "c-" + cluster.toString().substring(0, 8);
  }

  /**
   * Gives the present cluster another.
   *
   * @throws Refused if it is none, or another cluster has it
   */
  @Transactional
  public void change(String word) {
    Asked asked = new Asked();
    String wanted = check(word, asked);
    asked.refuseIfFaulty();
    rows.findById(current.id()).word = wanted;
    rows.flush();
  }

  /** The word as it was typed, which must be given, and must be no other cluster's. */
  public String check(String word, Asked asked) {
    String wanted = read(word, asked);
    if (clusters.find(wanted).filter(id -> !id.equals(current.id())).isPresent()) {
      asked.fault("word", say("word \"%s\" belongs to another cluster of this server.", wanted));
    }
    return wanted;
  }

  private static String read(String word, Asked asked) {
    String field = "word";
    String wanted = asked.needed(field, word, LONGEST).toLowerCase(Locale.ROOT);
    if (!wanted.isEmpty() && (!wanted.matches(FORM) || wanted.matches(ID))) {
      asked.fault(
          field,
          say(
              "%s \"%s\" must be one word of small letters, digits and hyphens, as in wenlow-valley.",
              field, wanted));
    }
    return wanted;
  }

  /** One that follows from the name, if no other cluster has it; else what there is. */
  String fitting(String name, String otherwise) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-");
    String word = plain.substring(0, Math.min(plain.length(), LONGEST)).replaceAll("^-+|-+$", "");
    return word.isEmpty() || clusters.find(word).isPresent() ? otherwise : word;
  }
}
