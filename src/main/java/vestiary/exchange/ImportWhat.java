package vestiary.exchange;

import java.util.List;
import vestiary.calendar.Term;

/** The lists that can be brought in, in the order in which one names things of another. */
public enum ImportWhat implements Term {
  CLUSTER(ClusterLine.COLUMNS),
  CHURCHES(ChurchLine.COLUMNS),
  PROPERS(ProperLine.COLUMNS),
  JOURNEYS(JourneyLine.COLUMNS),
  PEOPLE(PersonLine.COLUMNS),
  PATTERNS(PatternLine.COLUMNS),
  MASSES(MassLine.COLUMNS),
  ABSENCES(AbsenceLine.COLUMNS),
  PIECES(PieceLine.COLUMNS),
  CARE(CareLine.COLUMNS),
  OUT(OutLine.COLUMNS);

  private final List<Column> columns;

  ImportWhat(List<Column> columns) {
    this.columns = columns;
  }

  /** The columns that are understood, in the order in which the documentation lists them. */
  public List<Column> columns() {
    return columns;
  }

  /** Whether its days are words in the demo, since they move with the present week. */
  boolean isDated() {
    return this == MASSES || this == ABSENCES || this == CARE || this == OUT;
  }
}
