package vestiary.access;

/** How far a role may go with an action. */
public enum Reach {
  NOWHERE,

  /** In the churches that are named for the user. */
  OWN_CHURCHES,

  EVERYWHERE
}
