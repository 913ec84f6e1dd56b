package vestiary.vesting;

import vestiary.calendar.Term;

/**
 * What a vestment is. A priest's stole hangs straight down, a deacon's runs from the left shoulder
 * to the right side; they are two kinds.
 *
 * <p>Source: GIRM 336 to 341; mitre and vimpa: Ceremonial of Bishops (from memory).
 */
public enum PieceKind implements Term {
  CHASUBLE,
  STOLE,
  DEACON_STOLE,
  DALMATIC,
  COPE,
  HUMERAL_VEIL,
  ALB,
  AMICE,
  CINCTURE,
  SURPLICE,
  MITRE,
  VIMPA,
  PALL,
  OTHER
}
