package vestiary.planning;

import java.util.List;
import vestiary.allocation.remedy.Cost;

/**
 * One remedy of a clash in words, with what it would change.
 *
 * @param place in the list, from 1
 * @param sentence what is done, one sentence
 * @param how by whom and when; may be empty
 * @param costs what it costs, in people's words
 * @param also what else it changes, one sentence each; often empty
 * @param source the norm that allows it; empty where none is needed
 * @param cost the same in numbers
 * @param changes what is changed, one by one
 * @param isAdvice whether people must do it themselves, since no row can say it
 * @param takesName whether it is accepted by name
 * @param onAsking whether an owner must be asked first
 * @param fingerprint the same as long as it means the same
 */
public record OfferedRemedy(
    int place,
    String sentence,
    String how,
    String costs,
    List<String> also,
    String source,
    Cost cost,
    List<ChangeValue> changes,
    boolean isAdvice,
    boolean takesName,
    boolean onAsking,
    String fingerprint) {

  public OfferedRemedy {
    also = List.copyOf(also);
    changes = List.copyOf(changes);
  }

  /** Whether one press applies it. */
  public boolean isApplicable() {
    return !isAdvice;
  }
}
