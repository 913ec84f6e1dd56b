package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** The school terms of the cluster, which patterns may keep to. */
@ApplicationScoped
@Transactional
class KeepSchoolTerms {

  private static final int LONGEST_NAME = 60;
  private static final int MOST = 60;

  private final SchoolTermRows terms;

  KeepSchoolTerms(SchoolTermRows terms) {
    this.terms = terms;
  }

  /** By first date. */
  List<SchoolTermRow> all() {
    return terms.inOrder();
  }

  /**
   * Enters a term, or changes the dates of the one of that name. Masses that are made already stay;
   * their patterns say that they no longer agree.
   *
   * @param first as in 2026-09-01
   * @param last included
   * @throws Refused if a field is unfit
   */
  void keep(String name, String first, String last) {
    Asked asked = new Asked();
    String called = asked.needed("name", name, LONGEST_NAME);
    LocalDate starts = asked.date("first", first);
    LocalDate ends = asked.date("last", last);
    if (!asked.isFaulty() && ends.isBefore(starts)) {
      asked.fault("last", say("It ends on %s, before it begins on %s.", ends, starts));
    }
    if (terms.count() >= MOST) {
      asked.fault("name", say("%d terms are entered; take old ones off first.", MOST));
    }
    asked.refuseIfFaulty();
    SchoolTermRow row =
        terms.find("name", called).firstResultOptional().orElseGet(SchoolTermRow::new);
    row.name = called;
    row.starts = starts;
    row.ends = ends;
    terms.persist(row);
    terms.flush();
  }

  /**
   * Takes a term off.
   *
   * @throws Refused if there is none of that id
   */
  void remove(String id) {
    if (!terms.deleteById(Asked.id("school term", id))) {
      throw new Refused(new Refusal.NotThere("school term", id));
    }
  }
}
