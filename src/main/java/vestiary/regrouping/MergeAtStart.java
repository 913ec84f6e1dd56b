package vestiary.regrouping;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import vestiary.access.CurrentCluster;
import vestiary.schedule.UnfoldPatterns;

/** Merges the two clusters that whoever keeps the server names. */
@ApplicationScoped
class MergeAtStart {

  private static final Duration LONGEST = Duration.ofMinutes(10);
  private static final String SEPARATOR = ":";

  private final Sides sides;
  private final MergeClusters merge;
  private final ArchivesBefore archives;
  private final UnfoldPatterns unfold;
  private final CurrentCluster current;

  MergeAtStart(
      Sides sides,
      MergeClusters merge,
      ArchivesBefore archives,
      UnfoldPatterns unfold,
      CurrentCluster current) {
    this.sides = sides;
    this.merge = merge;
    this.archives = archives;
    this.unfold = unfold;
    this.current = current;
  }

  /**
   * Merges them; what was merged before stays so.
   *
   * @param named the one that ends and the one that remains, each by its word or id, with a colon
   *     between
   * @param isTrial whether nothing is to be changed
   * @return what happened, in lines
   * @throws vestiary.problem.Refused if they cannot be merged, in a sentence that says why
   */
  @ActivateRequestContext
  List<String> merge(String named, boolean isTrial) {
    String[] words = named.strip().split(SEPARATOR, -1);
    if (words.length != 2) {
      throw CannotRegroup.because(
          "\"%s\" names no two clusters. Write the one that ends and the one that remains with a colon between, as in VESTIARY_MERGE=river:hill.",
          named);
    }
    Side remaining = sides.get(words[1]);
    // Asked first, so that words left in the environment never end another cluster of that word.
    if (sides.isNoted(remaining, "merged", words[0])) {
      return List.of("%s was merged into %s before.".formatted(words[0], remaining.name()));
    }
    return merge(sides.get(words[0]), remaining, isTrial);
  }

  private List<String> merge(Side ended, Side remaining, boolean isTrial) {
    Report report = merge.attempt(ended, remaining);
    if (!isTrial) {
      LocalDate reached =
          ended.reached().isAfter(remaining.reached()) ? ended.reached() : remaining.reached();
      yieldMasses(ended, reached);
      yieldMasses(remaining, reached);
      archives.keep(remaining);
      report = merge.merge(ended, remaining, archives.keep(ended));
    }
    return report.lines(isTrial);
  }

  /** What has been yielded is never yielded again, so both have to have come as far. */
  private void yieldMasses(Side side, LocalDate reached) {
    current.assign(side.id());
    QuarkusTransaction.requiringNew()
        .timeout((int) LONGEST.toSeconds())
        .run(() -> unfold.exactlyUntil(reached));
  }
}
