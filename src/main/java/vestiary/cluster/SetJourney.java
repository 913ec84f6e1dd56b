package vestiary.cluster;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;

/** Says how long the journey between two churches takes. */
@ApplicationScoped
@Transactional
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
  public void set(Request request) {
    Asked asked = new Asked();
    JourneyRow way = read(request, asked);
    asked.refuseIfFaulty();
    journeys.keep(way.fromId, way.toId, way.minutes);
    if (!Boolean.TRUE.equals(request.oneWay())) {
      journeys.keep(way.toId, way.fromId, way.minutes);
    }
    journeys.flush();
  }

  /**
   * Makes a journey and the way back as long as that, unless it is so already.
   *
   * @param minutes 1 to 1,440, or 0 for a journey that nobody has timed
   * @throws Refused if there is no church of one of these short names
   */
  void setBothWays(String from, String to, int minutes) {
    ChurchRow here = churches.getBySlug(from);
    ChurchRow there = churches.getBySlug(to);
    if (journeys.minutes(here.id, there.id) == minutes) {
      return;
    }
    journeys.forget(here.id, there.id);
    journeys.forget(there.id, here.id);
    if (minutes > 0) {
      journeys.keep(here.id, there.id, minutes);
      journeys.keep(there.id, here.id, minutes);
    }
    churches.touch(here);
    churches.touch(there);
  }

  /** What is wrong with minutes that stand in a field of that name; none if they are not given. */
  List<FieldFault> findFaults(String field, Integer minutes) {
    Asked asked = new Asked();
    asked.whole(field, minutes, 1, A_DAY, 1);
    return asked.faults();
  }

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    read(request, asked);
    return asked.faults();
  }

  private JourneyRow read(Request request, Asked asked) {
    Optional<ChurchRow> from = church("from", request.from(), asked);
    Optional<ChurchRow> to = church("to", request.to(), asked);
    if (request.minutes() == null) {
      asked.fault("minutes", say("minutes is missing."));
    }
    JourneyRow way = new JourneyRow();
    way.minutes = asked.whole("minutes", request.minutes(), 1, A_DAY, 1);
    way.fromId = from.map(c -> c.id).orElse(null);
    way.toId = to.map(c -> c.id).orElse(null);
    if (from.isPresent() && way.fromId.equals(way.toId)) {
      asked.fault(
          "to", say("A journey leads from one church to another; both are \"%s\".", request.to()));
    }
    return way;
  }

  private Optional<ChurchRow> church(String field, String slug, Asked asked) {
    String wanted = asked.needed(field, slug, 40);
    if (wanted.isEmpty()) {
      return Optional.empty();
    }
    Optional<ChurchRow> church = churches.findBySlug(wanted);
    if (church.isEmpty()) {
      asked.fault(field, say("%s \"%s\" is no church of this cluster.", field, wanted));
    }
    return church;
  }
}
