package vestiary.calendar;

/** Whose judgement or order stands behind a votive Mass. Source: GIRM 374 to 377. */
public enum Leave implements Term {
  NONE,
  CELEBRANT,
  RECTOR,
  BISHOP
}
