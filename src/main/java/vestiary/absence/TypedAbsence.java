package vestiary.absence;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Map;
import vestiary.people.SaveAbsence;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;

/** Reads the forms of an absence; dates and hours are typed apart. */
final class TypedAbsence {

  /** What is kept of whoever is reported ill on one press. */
  private static final String ILL = "Ill";

  private static final List<String> FIELDS =
      List.of("from", "fromTime", "to", "toTime", "reason", "until");

  private TypedAbsence() {}

  /**
   * From some day on, whole days unless hours are given; a last hour without its day is of the
   * first.
   *
   * @throws Refused if no first day is given
   */
  static SaveAbsence.Request planned(Entries typed) {
    String from = typed.text("from").strip();
    if (from.isEmpty()) {
      throw new Refused(Refusal.Unfit.of("from", say("from is missing.")));
    }
    String to = typed.text("to").strip();
    String toTime = typed.text("toTime").strip();
    return new SaveAbsence.Request(
        at(from, typed.text("fromTime").strip()),
        at(to.isEmpty() && !toTime.isEmpty() ? from : to, toTime),
        typed.text("reason"));
  }

  /** From this moment on. */
  static SaveAbsence.Request ill(Entries typed) {
    return new SaveAbsence.Request("", typed.text("until").strip(), ILL);
  }

  /** What was typed, with what is wrong beside it. */
  static Entries marked(Entries typed, Refusal refusal) {
    return FormAnswer.mark(typed, refusal, Map.of());
  }

  /** The same for the form that asks for one date alone. */
  static Entries markedIll(Entries typed, Refusal refusal) {
    return FormAnswer.mark(typed, refusal, Map.of("to", "until"));
  }

  static String problem(Refusal refusal, Entries marked) {
    return FormAnswer.problem(refusal, marked, FIELDS);
  }

  private static String at(String date, String time) {
    return time.isEmpty() ? date : date + "T" + time;
  }
}
