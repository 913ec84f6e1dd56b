package vestiary.sending;

import java.util.List;

/**
 * Where a piece is, as the API writes it.
 *
 * @param set code of its set; absent if it has none
 * @param state in, out or care
 * @param church short name of the church where it is; absent where it is outside the cluster
 * @param sentence the same in words, as pages say it
 * @param sent how it went out, the latest first, the present time included
 */
record WhereaboutsBody(
    String piece,
    String set,
    String state,
    String church,
    String since,
    String due,
    Integer overdueDays,
    String sentence,
    List<LoanBody> sent) {}
