package vestiary.allocation.celebrant;

/**
 * What of a day a Mass is counted with. The Chrism Mass and the Easter Vigil are each counted by
 * themselves, since whoever celebrates them may celebrate again that day.
 *
 * <p>Source: General Instruction of the Roman Missal 204 a and b.
 */
public enum Portion {
  DAY,
  CHRISM,
  VIGIL
}
