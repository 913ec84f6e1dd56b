package vestiary.acceptance;

import java.time.Instant;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;

/**
 * A lawful substitute that was accepted for one person at one Mass.
 *
 * @param kind what is substituted
 * @param church where the Mass was when it was accepted
 * @param colour in which it was asked for then
 * @param person who wears it, as people call him; empty where only the number is known
 * @param by who accepted it; empty where nobody signed in
 */
public record AcceptedStep(
    Wearer wearer,
    PieceKind kind,
    ChurchId church,
    Colour colour,
    Step step,
    String person,
    String by,
    Instant at) {

  /**
   * Whether it answers this need. A Mass that has moved to another church or changed its colour
   * asks for something that nobody has decided about.
   */
  public boolean answers(Need need) {
    return need.wearer().equals(wearer)
        && need.kind() == kind
        && need.church().equals(church)
        && need.colour() == colour
        && need.ladder().contains(step);
  }

  /** The same, worn by whoever is named, and accepted at that moment. */
  public AcceptedStep by(String name, Instant moment) {
    return new AcceptedStep(wearer, kind, church, colour, step, name, by, moment);
  }
}
