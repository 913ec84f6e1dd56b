package vestiary.web;

import io.quarkus.qute.RawString;
import java.util.List;

/**
 * What stands round every page: the running head, the foot, and the demo's sentence.
 *
 * @param cluster the cluster's name; empty before it has one, and then no pages are offered
 * @param churches their number in words, for example "six churches"
 * @param section the page we are on: {@code week}, {@code day}, {@code year}, {@code times}, {@code
 *     clashes}, {@code vestments}, {@code import}, {@code settings}; empty for none of them
 * @param languages those offered; fewer than two and no choice is shown
 * @param demo the sentence of the demo; {@link Demo#NONE} elsewhere
 * @param printed when this was made, for paper, for example "Printed on 30 November 2026 at 10:42"
 * @param address of the page itself, to come back to after a choice of language
 * @param visitor the name of whoever has signed in; empty for nobody
 * @param overseer whether the visitor is one of another cluster, who looks into this one
 */
public record Frame(
    String cluster,
    String churches,
    String section,
    List<Language> languages,
    Demo demo,
    String printed,
    String address,
    String visitor,
    boolean overseer) {

  public Frame {
    languages = List.copyOf(languages);
  }

  /** A frame that needs nothing known: for the first page of all, and when the database is away. */
  public static Frame empty() {
    return new Frame("", "", "", List.of(), Demo.NONE, "", "/", "", false);
  }

  /** Whether we are on that page. */
  public boolean at(String page) {
    return section.equals(page);
  }

  /** The ribbons and chasubles that a page refers to, drawn once. */
  public RawString symbols() {
    return new RawString(Hatching.symbols());
  }

  /**
   * @param tag a BCP 47 tag, for example {@code es}
   * @param name in that language itself, for example "Español"
   */
  public record Language(String tag, String name, boolean current) {}

  /**
   * @param sentence says that all is invented; empty outside the demo
   * @param past whether the demo's fortnight lies behind us, so that moving it is offered
   */
  public record Demo(String sentence, boolean past) {

    public static final Demo NONE = new Demo("", false);
  }
}
