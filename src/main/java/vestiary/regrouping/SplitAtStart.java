package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Splits the cluster that whoever keeps the server names. */
@ApplicationScoped
class SplitAtStart {

  private static final String WORD = "[a-z0-9]+(-[a-z0-9]+)*";
  private static final int LONGEST_WORD = 40;

  private final Sides sides;
  private final SplitCluster split;
  private final ArchivesBefore archives;

  SplitAtStart(Sides sides, SplitCluster split, ArchivesBefore archives) {
    this.sides = sides;
    this.split = split;
    this.archives = archives;
  }

  /**
   * Splits it; what was split before stays so, and what was begun is ended.
   *
   * @param named the cluster by its word or id, the word of the new one, and the short names of the
   *     churches that go there with commas between, with colons between the three
   * @param isTrial whether nothing is to be changed
   * @return what happened, in lines
   * @throws vestiary.problem.Refused if it cannot be split, in a sentence that says why
   */
  @ActivateRequestContext
  List<String> split(String named, boolean isTrial) {
    String[] words = named.strip().split(":", -1);
    if (words.length != 3 || !words[1].matches(WORD) || words[1].length() > LONGEST_WORD) {
      throw CannotRegroup.because(
          "\"%s\" does not say what goes where. Write the cluster, a word for the new one in small letters, and the short names of the churches that go there, as in VESTIARY_SPLIT=hill:river:ol,pp.",
          named);
    }
    Side side = sides.get(words[0]);
    String word = words[1];
    if (sides.isNoted(side, "split-off", word)) {
      return List.of("%s was made of %s before.".formatted(word, side.name()));
    }
    Optional<Side> begun = sides.find(word);
    if (begun.isPresent() && !sides.isNoted(begun.get(), "split-from", side.word())) {
      throw CannotRegroup.because(
          "There is a cluster %s on this server already. Choose another word.", word);
    }
    List<String> going = Arrays.stream(words[2].split(",")).map(String::strip).distinct().toList();
    return split(side, word, begun, going, isTrial);
  }

  private List<String> split(
      Side side, String word, Optional<Side> begun, List<String> going, boolean isTrial) {
    SplitCluster.Division division = split.attempt(side, going, word);
    String what =
        "To %s go %s; in %s stay %s."
            .formatted(
                word,
                String.join(", ", division.going()),
                side,
                String.join(", ", division.staying()));
    if (isTrial) {
      return List.of(what, "This was a trial: nothing was changed.");
    }
    Path archive = archives.keep(side);
    Side made = begun.orElseGet(() -> split.copy(side, word, archive));
    split.part(side, made, division);
    String link = split.link(made);
    sides.noteSplit(side, made, archive);
    return List.of(
        what,
        "Nobody has a password in %s yet. Open this address once, within three days, to choose that of its administrator: %s"
            .formatted(made, link),
        "It is done. %s lies as it was in %s.".formatted(side.name(), archive));
  }
}
