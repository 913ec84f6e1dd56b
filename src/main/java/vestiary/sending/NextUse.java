package vestiary.sending;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;
import vestiary.web.Speech;

/**
 * For what something is planned or held next.
 *
 * @param wearers who wears it, or none where nobody said
 * @param from when it is to be set out
 * @param until when it is put away
 */
public record NextUse(DatedMass mass, List<Wearer> wearers, Instant from, Instant until) {

  public NextUse {
    wearers = List.copyOf(wearers);
  }

  /** For example "Cosmas Ilverton", or "the second concelebrant"; empty where nobody said. */
  public String who() {
    return wearers.stream().findFirst().map(this::named).orElse("");
  }

  private String named(Wearer wearer) {
    boolean byName = wearer.role() == Role.PRINCIPAL || wearer.role() == Role.MINISTER;
    Optional<Person> celebrant = byName ? mass.findCelebrant() : Optional.empty();
    return celebrant
        .map(Person::calledName)
        .orElseGet(
            () ->
                switch (wearer.role()) {
                  case PRINCIPAL -> say("the celebrant");
                  case MINISTER -> say("the minister");
                  default ->
                      say(
                          "the %s",
                          Speech.nth(wearer.ordinal(), wearer.role().id().replace('-', ' ')));
                });
  }

  /** In tight places: the surname, or for what Mass, for example "Ilverton" or "the 18:30". */
  public String inShort() {
    boolean byName =
        wearers.stream()
            .anyMatch(one -> one.role() == Role.PRINCIPAL || one.role() == Role.MINISTER);
    return mass.findCelebrant()
        .filter(celebrant -> byName)
        .map(Person::tightName)
        .orElse(say("the %1$s", Speech.clock(mass.start())));
  }

  /** The same, worn by others. */
  NextUse wornBy(List<Wearer> others) {
    return new NextUse(mass, others, from, until);
  }
}
