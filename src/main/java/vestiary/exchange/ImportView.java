package vestiary.exchange;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Frame;

/**
 * Lists to be brought in, and those that were.
 *
 * @param what which kind of file; churches, propers, journeys, people, patterns, masses, pieces,
 *     care
 * @param fileError what is wrong with the file as such; empty if nothing is
 * @param problem what stands against undoing one; empty if nothing does
 * @param done what was brought in, the last first
 * @param kinds each kind of file with its columns
 */
public record ImportView(
    Frame frame, Choice what, String fileError, String problem, List<Done> done, List<Kind> kinds) {

  public ImportView {
    done = List.copyOf(done);
    kinds = List.copyOf(kinds);
  }

  /**
   * @param sentence for example "Masses: 214 lines, imported on 26 November 2026 at 14:05 by Maren
   *     Dovecote."
   * @param address of its page
   * @param undo where the form leads that undoes it; empty where that cannot be
   */
  public record Done(String sentence, String address, String undo) {}

  /**
   * @param sentence for example "Tried, nothing changed yet: 51 pieces would be new."
   * @param counts for example "48 new", "3 changed", "2 lines not understood"
   * @param lines those that could not be brought in
   */
  public record Result(String sentence, List<String> counts, List<Line> lines) {

    public static final Result NONE = new Result("", List.of(), List.of());

    public Result {
      counts = List.copyOf(counts);
      lines = List.copyOf(lines);
    }
  }

  /**
   * @param number in the file, the heading being line 1
   * @param column for example "colours"; may be empty
   * @param reason one whole sentence
   * @param text what stands there
   */
  public record Line(int number, String column, String reason, String text) {}

  /**
   * @param id what the form sends, for example {@code pieces}
   * @param name for example "Vestments"
   * @param about one or two sentences
   */
  public record Kind(String id, String name, String about, List<Column> columns) {
    public Kind {
      columns = List.copyOf(columns);
    }
  }

  /**
   * @param needed whether a line without it is refused
   */
  public record Column(String name, boolean needed, String meaning, String example) {}
}
