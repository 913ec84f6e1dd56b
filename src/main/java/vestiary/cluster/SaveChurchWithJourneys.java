package vestiary.cluster;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;

/** Keeps a church together with the journeys from it, all or nothing, as one form has them. */
@ApplicationScoped
@Transactional
class SaveChurchWithJourneys {

  /** What the form calls the journey to a church, with the church's short name after it. */
  static final String JOURNEY = "journey-";

  private static final String NO_CHURCH =
      word("There is no church \"%s\" any more; open the form again to see what it is called now.");

  private final SaveChurch churches;
  private final SetJourney journeys;
  private final ReadCluster cluster;

  SaveChurchWithJourneys(SaveChurch churches, SetJourney journeys, ReadCluster cluster) {
    this.churches = churches;
    this.journeys = journeys;
    this.cluster = cluster;
  }

  /**
   * A church with its journeys.
   *
   * @param timed minutes by the other church's short name, the way back being as long
   * @param untimed short names of churches to which nobody has timed the journey
   */
  record Request(SaveChurch.Request church, Map<String, Integer> timed, Set<String> untimed) {
    Request {
      timed = Map.copyOf(timed);
      untimed = Set.copyOf(untimed);
    }
  }

  /**
   * What is wrong with a request; empty if it can be kept. Nothing is changed.
   *
   * @param slug short name that the church has so far; empty for a new one
   */
  List<FieldFault> findFaults(String slug, Request request) {
    List<FieldFault> faults = new ArrayList<>(churches.findFaults(slug, request.church()));
    request
        .timed()
        .forEach(
            (to, minutes) -> {
              faults.addAll(journeys.findFaults(JOURNEY + to, minutes));
              if (!isChurch(to)) {
                faults.add(new FieldFault(JOURNEY + to, say(NO_CHURCH, to)));
              }
            });
    return faults;
  }

  /**
   * Enters a new church.
   *
   * @return its short name
   * @throws Refused if a field is unfit or the short name is taken
   */
  String enter(Request request) {
    return withJourneys(churches.enter(request.church()), request);
  }

  /**
   * Changes a church.
   *
   * @return its short name, which may have changed too
   * @throws Refused if there is none of that short name, it was changed meanwhile, or a field is
   *     unfit
   */
  String change(String slug, Request request) {
    return withJourneys(churches.change(slug, request.church()), request);
  }

  private String withJourneys(String slug, Request request) {
    request.timed().forEach((to, minutes) -> journeys.setBothWays(slug, to, minutes));
    request.untimed().stream()
        .filter(this::isChurch)
        .forEach(to -> journeys.setBothWays(slug, to, 0));
    return slug;
  }

  private boolean isChurch(String slug) {
    return cluster.findChurch(slug).isPresent();
  }
}
