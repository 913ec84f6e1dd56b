package vestiary.review;

import java.time.LocalDateTime;
import java.util.List;
import java.util.UUID;
import vestiary.calendar.Colour;

/**
 * One Mass or other liturgy as it stood when somebody looked at the week.
 *
 * @param church its name
 * @param redLetter whether it belongs to a Sunday or a holy day
 * @param start in the cluster's time zone
 * @param what for example "of Sunday, Second Sunday of Advent"
 * @param celebrants id of the principal celebrant; none if nobody is named
 * @param bishop whether a bishop presides
 * @param company for example "three concelebrants and one deacon"; empty if he is alone
 * @param vestments codes of sets and single pieces, planned or set aside, in order
 * @param journeys for example "HT-W1, chasuble and stole, from Holy Trinity, there by 17:46"
 * @param serving lay ministers who are named, by role; none in weeks that were signed before any
 *     were kept
 */
record MassSeen(
    UUID id,
    String church,
    boolean redLetter,
    LocalDateTime start,
    int minutes,
    String what,
    Colour colour,
    List<UUID> celebrants,
    boolean bishop,
    String company,
    List<String> vestments,
    List<String> journeys,
    List<ServingSeen> serving) {

  MassSeen {
    celebrants = List.copyOf(celebrants);
    vestments = List.copyOf(vestments);
    journeys = List.copyOf(journeys);
    serving = serving == null ? List.of() : List.copyOf(serving);
  }
}
