package vestiary.planning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.vesting.Need;
import vestiary.web.Speech;

/** What one Mass asks of the pool. */
@ApplicationScoped
class NeedsOfMass {

  private final ReadMasses masses;
  private final CheckClashes check;

  NeedsOfMass(ReadMasses masses, CheckClashes check) {
    this.masses = masses;
    this.check = check;
  }

  /**
   * @param needs in canonical order; none if the Mass is cancelled
   */
  record Found(DatedMass mass, List<Need> needs, ZoneId zone, Locale locale) {}

  /**
   * The needs of the Mass that an address names.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  @Transactional
  Found get(String id) {
    DatedMass mass = masses.get(id);
    SpanToCheck span = check.load(mass.date(), mass.date());
    List<Need> needs = mass.chosen().cancelled() ? List.of() : span.needs(mass);
    return new Found(
        mass, needs, span.cluster().zone(), Speech.localeOr(span.cluster().language()));
  }
}
