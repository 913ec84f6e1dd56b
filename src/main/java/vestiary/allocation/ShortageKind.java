package vestiary.allocation;

import vestiary.calendar.Term;

/**
 * Why the needs of a finding cannot share a piece: all are at one moment (or follow too closely in
 * one church), or only the journey between two of them is too long or not known.
 */
public enum ShortageKind implements Term {
  SHORTAGE,
  UNREACHABLE
}
