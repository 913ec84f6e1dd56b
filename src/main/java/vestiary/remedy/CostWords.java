package vestiary.remedy;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import vestiary.allocation.remedy.Change;
import vestiary.allocation.remedy.Cost;
import vestiary.allocation.remedy.Remedy;
import vestiary.people.CarrierName;
import vestiary.web.Speech;

/** What a remedy costs, as people would say it. */
final class CostWords {

  private final Remedy remedy;
  private final Cost cost;
  private final List<Journey> journeys;
  private final List<String> owners;

  /**
   * @param owners whom to ask first; empty if nobody
   */
  CostWords(Remedy remedy, List<Journey> journeys, List<String> owners) {
    this.journeys = List.copyOf(journeys);
    this.remedy = remedy;
    this.cost = remedy.cost();
    this.owners = List.copyOf(owners);
  }

  /** One or more whole sentences. */
  String sentence() {
    List<String> said = new ArrayList<>();
    if (!OfferRemedies.isAdvice(remedy)) {
      said.add(driving());
    }
    toSay().ifPresent(said::add);
    if (!owners.isEmpty()) {
      said.add(say("%s must be asked first.", Speech.sentence(Speech.list(owners))));
    }
    return String.join(" ", said);
  }

  private String driving() {
    if (cost.carriages() == 1) {
      return say("One drive of %s by whoever goes.", minutes());
    }
    if (cost.carriages() > 1) {
      return say(
          "%s, %s in all.",
          Speech.sentence(Speech.count((int) cost.carriages(), "drive")), minutes());
    }
    if (cost.minutes() > 0) {
      return say("%s more on the road than without it.", minutes());
    }
    return journeys.stream()
        .map(Journey::carrier)
        .filter(carrier -> !carrier.isEmpty())
        .findFirst()
        .map(CarrierName::of)
        .map(carrier -> say("Nothing needs to be driven: %s drives there anyway.", carrier))
        .orElse(
            journeys.isEmpty()
                ? say("Nothing is carried.")
                : say("Nothing more is driven: it rides along with what is carried anyway."));
  }

  private String minutes() {
    return say(cost.minutes() == 1 ? word("%d minute") : word("%d minutes"), cost.minutes());
  }

  private Optional<String> toSay() {
    Change change = remedy.change();
    if (change instanceof Change.TakeStep) {
      return Optional.of(say("A step down from what the norms ask for first."));
    } else if (change instanceof Change.MoveStart) {
      return Optional.of(say("The new hour must be told to all."));
    } else if (change instanceof Change.ChooseColour choice && choice.chosen()) {
      return Optional.of(say("Another colour than was chosen."));
    } else if (change instanceof Change.BringOwn) {
      return Optional.of(say("Not certain before they agree."));
    } else if (change instanceof Change.Release) {
      return Optional.of(say("Whoever set it aside must be told."));
    } else if (change instanceof Change.BringBack) {
      return Optional.of(say("Depends on whoever has it."));
    } else if (change instanceof Change.Borrow) {
      return Optional.of(say("Somebody must ask, fetch it and give it back."));
    } else if (change instanceof Change.Buy) {
      return Optional.of(say("Costs money; worth it where this comes again."));
    }
    return Optional.empty();
  }
}
