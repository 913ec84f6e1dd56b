package vestiary.merger;

import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What the API takes and answers where churches close and parishes merge. */
final class MergerBodies {

  private MergerBodies() {}

  /**
   * @param from first date without Mass
   * @param note the decree; may be absent
   */
  record Closing(@Schema(examples = "2027-01-01") String from, String note) {}

  /**
   * @param done whether it was done; not on a trial
   * @param ends what ends with it and what is left to be done, in sentences
   * @param pieces how many are at home there still
   */
  record Closed(String church, LocalDate from, boolean done, List<String> ends, int pieces) {}

  /**
   * @param to short name of the church where they are at home from now on
   */
  record Goods(String to) {}

  /**
   * @param pieces how many have, or would have, another home
   */
  record Moved(boolean done, int pieces) {}

  /**
   * @param into id of the parish that stays
   * @param since first date on which that holds, today or earlier
   * @param note the decree; may be absent
   */
  record Merging(String into, @Schema(examples = "2027-01-01") String since, String note) {}

  /**
   * @param churches names of those that belong, or would belong, to the other
   * @param pieces how many have, or would have, another owner
   */
  record Merged(boolean done, List<String> churches, int pieces) {}

  /**
   * @param mergedInto name of the parish into which it was merged; absent while it stands
   * @param mergedFrom since when; absent likewise
   */
  record Parish(
      String id, String name, List<String> churches, String mergedInto, String mergedFrom) {}
}
