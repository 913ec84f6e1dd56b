package vestiary.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import vestiary.allocation.remedy.Change;
import vestiary.allocation.remedy.Cost;
import vestiary.allocation.remedy.Remedy;
import vestiary.web.English;

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
      said.add("%s must be asked first.".formatted(English.sentence(English.list(owners))));
    }
    return String.join(" ", said);
  }

  private String driving() {
    if (cost.carriages() == 1) {
      return "One drive of %s by whoever goes.".formatted(minutes());
    }
    if (cost.carriages() > 1) {
      return "%s, %s in all."
          .formatted(English.sentence(English.count((int) cost.carriages(), "drive")), minutes());
    }
    if (cost.minutes() > 0) {
      return "%s more on the road than without it.".formatted(minutes());
    }
    return journeys.stream()
        .map(Journey::carrier)
        .filter(carrier -> !carrier.isEmpty())
        .findFirst()
        .map("Nothing needs to be driven: %s drives there anyway."::formatted)
        .orElse(
            journeys.isEmpty()
                ? "Nothing is carried."
                : "Nothing more is driven: it rides along with what is carried anyway.");
  }

  private String minutes() {
    return cost.minutes() + (cost.minutes() == 1 ? " minute" : " minutes");
  }

  private Optional<String> toSay() {
    Change change = remedy.change();
    if (change instanceof Change.TakeStep) {
      return Optional.of("A step down from what the norms ask for first.");
    } else if (change instanceof Change.MoveStart) {
      return Optional.of("The new hour must be told to all.");
    } else if (change instanceof Change.ChooseColour choice && choice.chosen()) {
      return Optional.of("Another colour than was chosen.");
    } else if (change instanceof Change.BringOwn) {
      return Optional.of("Not certain before they agree.");
    } else if (change instanceof Change.Release) {
      return Optional.of("Whoever set it aside must be told.");
    } else if (change instanceof Change.BringBack) {
      return Optional.of("Depends on whoever has it.");
    } else if (change instanceof Change.Borrow) {
      return Optional.of("Somebody must ask, fetch it and give it back.");
    } else if (change instanceof Change.Buy) {
      return Optional.of("Costs money; worth it where this comes again.");
    }
    return Optional.empty();
  }
}
