package vestiary.exchange;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * One list on its way in.
 *
 * @param title for example "Masses"
 * @param others lists that it may be taken for instead; no options where it is settled
 * @param calendarFile whether it is a calendar and no list
 * @param file name of the file; may be empty
 * @param address of this page
 * @param problem what stands against what was asked for; empty if nothing does
 * @param working {@link Working#NONE} while the server is not at it
 * @param outcome what came of it the last time
 * @param columns what is asked about the file; {@link Columns#NONE} where nothing is
 * @param calendar what is asked about a calendar; {@link Calendar#NONE} where it is a table
 * @param undo where the form leads that undoes it; empty where that cannot be
 */
public record ImportStepView(
    Frame frame,
    String title,
    Choice others,
    boolean calendarFile,
    String file,
    String address,
    String problem,
    Working working,
    Outcome outcome,
    Columns columns,
    Calendar calendar,
    String undo) {

  /** Whether there is anything to press. */
  public boolean isAsked() {
    return !columns.rows().isEmpty() || calendar.isAsked();
  }

  /**
   * @param sentence how far it is
   * @param done lines worked through; likewise all, 0 if the server is not at it
   */
  public record Working(String sentence, int done, int all) {
    public static final Working NONE = new Working("", 0, 0);
  }

  /**
   * @param result in a sentence, counts and lines
   * @param found what an event of a calendar comes to, one sentence each; none for a list
   * @param shown which of the lines are shown, for example "Lines 101 to 200 of 1,412"; empty if
   *     all are
   * @param before address of those before; empty if there are none, likewise after
   */
  public record Outcome(
      ImportView.Result result, List<String> found, String shown, String before, String after) {
    public static final Outcome NONE = new Outcome(ImportView.Result.NONE, List.of(), "", "", "");

    public Outcome {
      found = List.copyOf(found);
    }
  }

  /**
   * @param rows what is needed, found in the file or faulty
   * @param left other columns that could be chosen
   * @param leftSentence how many these are
   * @param note how the letters of the file were read, where that is a guess; may be empty
   * @param readings whole sentences on what is read out of a column in a way of its own
   * @param unused names of columns that are not used; may be empty
   * @param days in which order days are written; no options where that does not matter
   */
  public record Columns(
      List<Row> rows,
      List<Row> left,
      String leftSentence,
      String note,
      List<String> readings,
      String unused,
      Choice days) {
    public static final Columns NONE =
        new Columns(List.of(), List.of(), "", "", List.of(), "", Choice.of(List.of()));

    public Columns {
      rows = List.copyOf(rows);
      left = List.copyOf(left);
      readings = List.copyOf(readings);
    }

    /** Whether it is said in which order days are written. */
    public boolean isOrderSaid() {
      return days.options().stream().anyMatch(one -> one.chosen() && !one.value().isEmpty());
    }
  }

  /**
   * @param name of our column, as the file format has it
   * @param heading what it holds, in few words
   * @param more what else is to be known of it; may be empty
   * @param field name of the field in which its place in the file is chosen
   * @param first the first values of the chosen column
   * @param sameField name of the field for what holds on every line, or on those where the column
   *     is empty; empty where it is not offered
   */
  public record Row(
      String name,
      boolean needed,
      String heading,
      String more,
      String field,
      Choice choice,
      String first,
      String sameField,
      Field same) {

    /** Whether it is needed, chosen or faulty, and so to be looked at. */
    public boolean isTold() {
      return needed || isChosen() || !choice.error().isEmpty() || !same.error().isEmpty();
    }

    /** Whether a column of the file, or a value for every line, stands there. */
    public boolean isChosen() {
      return isPlaced() || !same.value().isEmpty();
    }

    /** Whether a column of the file is chosen for it. */
    public boolean isPlaced() {
      return choice.options().stream().anyMatch(one -> one.chosen() && !one.value().isEmpty());
    }
  }

  /**
   * @param church for all of the file, or none
   * @param from first date that is looked at; likewise to, the last
   */
  public record Calendar(Choice church, String from, String fromError, String to, String toError) {
    public static final Calendar NONE = new Calendar(Choice.of(List.of()), "", "", "", "");

    public boolean isAsked() {
      return !church.options().isEmpty();
    }
  }
}
