package vestiary.calendar;

/**
 * How the Mass of an evening between two great days is settled: by the day that obliges first
 * (Notitiae 20, 1984), or by rank alone (Notitiae 10, 1974), which some dioceses still follow.
 */
public enum EveningRule implements Term {
  PRECEPT,
  RANK
}
