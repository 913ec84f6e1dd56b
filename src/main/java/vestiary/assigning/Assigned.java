package vestiary.assigning;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.UUID;
import vestiary.people.Person;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/** What a press sends for one Mass: the Mass, who is named for it now, and who is to be. */
final class Assigned {

  private static final String NOBODY = "nobody";
  private static final int PARTS = 3;
  private static final int LONGEST = 200;

  private Assigned() {}

  static String value(DatedMass mass, UUID celebrant) {
    String now = mass.findCelebrant().map(Person::id).map(UUID::toString).orElse(NOBODY);
    return "%s %s %s".formatted(mass.id().value(), now, celebrant);
  }

  /**
   * The same, read.
   *
   * @throws vestiary.problem.Refused if it is nothing of the kind
   */
  static AssignCelebrants.Wanted parse(String value) {
    Asked asked = new Asked();
    String[] parts = asked.needed("assign", value, LONGEST).split(" ");
    if (parts.length != PARTS && !asked.isFaulty()) {
      asked.fault("assign", say("assign names a Mass, who celebrates it now, and who is to."));
    }
    asked.refuseIfFaulty();
    return new AssignCelebrants.Wanted(
        new MassId(Asked.id("Mass", parts[0])),
        parts[1].equals(NOBODY) ? List.of() : List.of(Asked.id("person", parts[1])),
        Asked.id("person", parts[2]));
  }
}
