package vestiary.people;

import vestiary.calendar.Term;

/** What a person is in the cluster. */
public enum PersonRole implements Term {
  PRIEST,
  DEACON,
  BISHOP,
  ADMINISTRATOR,
  SACRISTAN,
  MINISTER;

  /** Whether he can be the principal celebrant of a Mass. */
  public boolean canCelebrate() {
    return this == PRIEST || this == BISHOP;
  }
}
