package vestiary.movement;

import static vestiary.web.Speech.say;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.asking.Asking;
import vestiary.plan.TripView;
import vestiary.plan.TripWords;
import vestiary.pool.PooledPiece;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the journeys of a week, driver by driver, and those who are to be asked. */
final class MovementsSheet {

  private final ReadErrands.Errands found;
  private final List<OwnerAsked> owners;
  private final TripWords words;
  private final ErrandWords asked;

  MovementsSheet(
      ReadErrands.Errands found,
      List<OwnerAsked> owners,
      List<PooledPiece> pieces,
      ErrandWords asked) {
    this.found = found;
    this.owners = owners;
    this.words =
        new TripWords(List.copyOf(found.churches().values()), pieces, found.cluster().zone());
    this.asked = asked;
  }

  String lead() {
    List<Errand> errands = found.errands();
    if (errands.isEmpty()) {
      return say(
          "Nothing is carried this week. Plan the week, and what has to be carried stands here.");
    }
    long own = errands.stream().filter(one -> one.trip().carrier().isEmpty()).count();
    long open = errands.stream().filter(one -> one.driver().isEmpty()).count();
    return say(
        "%s; %s made for vestments alone%s.",
        Speech.sentence(Speech.count(errands.size(), "journey")),
        Speech.count((int) own) + (own == 1 ? " " + say("is") : " " + say("are")),
        open == 0 ? "" : say(", and for %s nobody is asked yet", Speech.count((int) open)));
  }

  List<MovementsView.Driver> drivers() {
    Map<String, List<Errand>> byDriver =
        found.errands().stream()
            .collect(Collectors.groupingBy(Errand::driver, TreeMap::new, Collectors.toList()));
    return byDriver.entrySet().stream()
        .map(
            driver ->
                new MovementsView.Driver(
                    driver.getKey().isEmpty() ? say("Somebody is to be asked") : driver.getKey(),
                    driver.getValue().stream()
                        .sorted(Comparator.comparing(one -> one.trip().leaveBy()))
                        .map(this::trip)
                        .toList()))
        .toList();
  }

  private TripView trip(Errand one) {
    return words.view(one.trip()).with(asked.inShort(one), "/movements/" + one.trip().id());
  }

  List<MovementsView.Dropped> dropped() {
    return found.dropped().stream().map(this::dropped).toList();
  }

  private MovementsView.Dropped dropped(Asking one) {
    return new MovementsView.Dropped(
        say(
            "%s: nothing is to be carried from %s to %s on %s any more.",
            Speech.sentence(one.name()),
            words.church(one.trip().from().value()),
            words.church(one.trip().to().value()),
            words.moment(one.trip().leaveBy())),
        new Link(say("It was told"), "/movements/" + one.trip().id()));
  }

  List<MovementsView.Owner> owners() {
    return owners.stream()
        .map(
            one ->
                new MovementsView.Owner(
                    one.owner(),
                    say(
                        "%s for %s. %s",
                        Speech.sentence(words.named(one.pieces())), one.about(), asked.owner(one)),
                    new Link(
                        one.consents().isEmpty() ? say("Ask") : say("The answer"), one.address())))
        .toList();
  }
}
