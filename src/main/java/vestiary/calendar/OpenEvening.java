package vestiary.calendar;

/**
 * Which Mass is taken on an evening that no law settles: before a solemnity that does not oblige
 * and has no Vigil Mass of its own, as on 18 March. The other may be said as well. Common practice,
 * no source.
 */
public enum OpenEvening implements Term {
  SOLEMNITY,
  WEEKDAY
}
