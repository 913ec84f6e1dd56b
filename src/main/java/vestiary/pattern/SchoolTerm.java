package vestiary.pattern;

import java.time.LocalDate;

/**
 * A stretch of school days, as the cluster has entered it; no calendar of the Church knows it.
 *
 * @param name for example "Autumn 2026"
 * @param last last date, included, not before the first
 */
public record SchoolTerm(String name, LocalDate first, LocalDate last) {

  public SchoolTerm {
    if (last.isBefore(first)) {
      throw new IllegalArgumentException(name + " ends before it begins.");
    }
  }

  public boolean contains(LocalDate date) {
    return !date.isBefore(first) && !date.isAfter(last);
  }
}
