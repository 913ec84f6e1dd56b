package vestiary.problem;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** What comes of a form that was sent: either it was done, or it is shown again. */
public final class FormAnswer {

  private FormAnswer() {}

  /**
   * Does what the form asks for. A refusal that the person at the form can mend is answered with
   * {@code again}; every other one ends the request.
   */
  public static <T> T of(Supplier<T> deed, Function<Refusal, T> again) {
    try {
      return deed.get();
    } catch (Refused refused) {
      return again(refused, refused.refusal(), again);
    } catch (RuntimeException failure) {
      Refusal refusal = DatabaseRefusals.find(failure).orElseThrow(() -> failure);
      return again(failure, refusal, again);
    }
  }

  /**
   * The entries as they were typed, with what is wrong with them.
   *
   * @param names the form's name of a field where it differs from the API's; a field that is not
   *     named keeps its name, without what stands before its last dot
   */
  public static Entries mark(Entries typed, Refusal refusal, Map<String, String> names) {
    Map<String, String> errors = new LinkedHashMap<>();
    for (FieldFault fault : refusal.faults()) {
      errors.merge(
          names.getOrDefault(fault.field(), lastPart(fault.field())),
          fault.besideField(),
          (first, next) -> first + " " + next);
    }
    return typed.withErrors(errors);
  }

  /**
   * The sentence over the whole form: how much is to be put right, or what is wrong where no field
   * of the form can show it.
   *
   * @param shown names of the fields that the form has
   */
  public static String problem(Refusal refusal, Entries marked, List<String> shown) {
    boolean allShown = shown.containsAll(marked.errors().keySet());
    if (marked.errors().isEmpty() || !allShown) {
      return refusal.detail();
    }
    int count = marked.errors().size();
    return say(
        count == 1
            ? word("Nothing was saved; %s below is to be put right.")
            : word("Nothing was saved; %s below are to be put right."),
        Speech.count(count, "thing"));
  }

  private static <T> T again(
      RuntimeException failure, Refusal refusal, Function<Refusal, T> again) {
    return switch (refusal.status()) {
      case 400, 409, 422, 429 -> again.apply(refusal);
      default -> throw failure;
    };
  }

  private static String lastPart(String field) {
    return field.substring(field.lastIndexOf('.') + 1);
  }
}
