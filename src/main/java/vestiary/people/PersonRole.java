package vestiary.people;

import java.util.Set;
import vestiary.calendar.Term;

/** What a person is in the cluster. */
public enum PersonRole implements Term {
  PRIEST,
  DEACON,
  BISHOP,
  ADMINISTRATOR,
  SACRISTAN,
  SERVER,
  READER,
  MINISTER;

  private static final Set<PersonRole> OF_THE_YOUNG = Set.of(SERVER, READER, MINISTER);

  /** Whether he can be the principal celebrant of a Mass. */
  public boolean canCelebrate() {
    return this == PRIEST || this == BISHOP;
  }

  public boolean isOrdained() {
    return canCelebrate() || this == DEACON;
  }

  /** Whether somebody under 18 can be it. */
  public boolean canBeYoung() {
    return OF_THE_YOUNG.contains(this);
  }
}
