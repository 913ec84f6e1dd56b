package vestiary.remedy;

import java.util.List;
import vestiary.pool.Consent;

/**
 * What owners keep back: a piece that may not go to a Mass is in no remedy that takes it there.
 *
 * @param refused answers of owners that are no
 */
record KeptBack(List<Consent> refused) {

  KeptBack {
    refused = List.copyOf(refused);
  }

  /** Whether what would be planned goes against an answer. */
  boolean forbids(Deed deed) {
    return deed.added().worn().stream()
        .anyMatch(
            worn ->
                refused.stream()
                    .anyMatch(
                        one ->
                            one.piece().equals(worn.piece())
                                && one.mass().equals(worn.wearer().mass())));
  }
}
