package vestiary.planning;

import java.util.List;
import vestiary.web.ClashMark;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * One clash with its proof, in words for its page. It shows needs alike and never says who goes
 * without.
 *
 * @param about place and time, for example "Saint Anne, Millferry · Tuesday 8 December, 18:30"
 * @param title states the count: "Three concelebrants need white; two white sets are there"
 * @param context one or two sentences
 * @param turn back to the week, the day and the Mass
 * @param count {@link CountPicture.Drawing#NONE} if this is no shortage
 * @param journey {@link JourneyPicture.Drawing#NONE} if nothing comes too late
 * @param proof the table of a proof that is longer than counting two lists
 * @param words the proof, one paragraph each
 * @param verdict for example "Three needed, two there, one short."
 * @param sources for example "Colour: GIRM 346."
 * @param tallyTitle for example "The thirteen white sets of the cluster"
 * @param tally every piece of that kind, each counted once; empty if pieces play no part
 * @param tallyTotal for example "13, each counted once"
 * @param tallyNote what is not counted; may be empty
 * @param steps lawful steps, one sentence each, with their norms; may be empty
 * @param carriages what could be carried here, one sentence each; may be empty
 * @param mending what mends it; where something does, steps and carriages are not shown beside it
 */
public record ClashView(
    Frame frame,
    ClashMark mark,
    String about,
    String title,
    String context,
    List<Link> turn,
    CountPicture.Drawing count,
    JourneyPicture.Drawing journey,
    ProofView proof,
    List<String> words,
    String verdict,
    String sources,
    String tallyTitle,
    List<TallyLine> tally,
    String tallyTotal,
    String tallyNote,
    List<String> steps,
    List<String> carriages,
    MendingView mending) {

  public ClashView {
    turn = List.copyOf(turn);
    words = List.copyOf(words);
    tally = List.copyOf(tally);
    steps = List.copyOf(steps);
    carriages = List.copyOf(carriages);
  }

  /** The same with what mends it. */
  ClashView with(MendingView other) {
    return new ClashView(
        frame,
        mark,
        about,
        title,
        context,
        turn,
        count,
        journey,
        proof,
        words,
        verdict,
        sources,
        tallyTitle,
        tally,
        tallyTotal,
        tallyNote,
        steps,
        carriages,
        other);
  }

  /**
   * @param count how many, 1 or more
   * @param shapes one a piece: a colour's id, or {@code away} where it cannot be had
   * @param words for example "at the cleaner to 11 December"
   * @param codes for example "SA-W3"
   */
  public record TallyLine(int count, List<String> shapes, String words, String codes) {
    public TallyLine {
      shapes = List.copyOf(shapes);
    }
  }
}
