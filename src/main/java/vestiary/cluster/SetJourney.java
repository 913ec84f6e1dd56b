package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.problem.Asked;
import vestiary.problem.Refused;

/** Says how long the journey between two churches takes. */
@ApplicationScoped
public class SetJourney {

  private static final int A_DAY = 24 * 60;

  private final ChurchRows churches;
  private final JourneyRows journeys;

  SetJourney(ChurchRows churches, JourneyRows journeys) {
    this.churches = churches;
    this.journeys = journeys;
  }

  /**
   * One journey.
   *
   * @param from short name of the church it starts at
   * @param to short name of the church it leads to
   * @param minutes 1 to 1,440
   * @param oneWay whether the way back is left as it was
   */
  public record Request(String from, String to, Integer minutes, Boolean oneWay) {}

  /**
   * Enters or changes a journey, both ways alike unless it is said to be one way.
   *
   * @throws Refused if a church is unknown, both are the same, or the minutes are out of bounds
   */
  @Transactional
  public void set(Request request) {
    Asked asked = new Asked();
    ChurchRow from = church("from", request.from(), asked);
    ChurchRow to = church("to", request.to(), asked);
    if (request.minutes() == null) {
      asked.fault("minutes", "minutes is missing.");
    }
    int minutes = asked.whole("minutes", request.minutes(), 1, A_DAY, 1);
    if (from != null && from == to) {
      asked.fault(
          "to", "A journey leads from one church to another; both are \"%s\".".formatted(to.slug));
    }
    asked.refuseIfFaulty();
    journeys.keep(from.id, to.id, minutes);
    if (!Boolean.TRUE.equals(request.oneWay())) {
      journeys.keep(to.id, from.id, minutes);
    }
    journeys.flush();
  }

  private ChurchRow church(String field, String slug, Asked asked) {
    String wanted = asked.needed(field, slug, 40);
    if (wanted.isEmpty()) {
      return null;
    }
    return churches
        .findBySlug(wanted)
        .orElseGet(
            () -> {
              asked.fault(
                  field, "%s \"%s\" is no church of this cluster.".formatted(field, wanted));
              return null;
            });
  }
}
