package vestiary.pattern;

import java.time.LocalDate;
import java.util.List;
import vestiary.calendar.Term;

/** Whether a pattern keeps to the school terms that the cluster has entered. */
public enum SchoolTime implements Term {
  /** In terms and holidays alike. */
  ALWAYS,
  /** Only while a term lasts; none is said beyond the last term that was entered. */
  IN_TERM,
  /** Only between terms. */
  IN_HOLIDAYS;

  boolean allows(LocalDate date, List<SchoolTerm> terms) {
    return this == ALWAYS
        || terms.stream().anyMatch(term -> term.contains(date)) == (this == IN_TERM);
  }
}
