package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import vestiary.vesting.MassId;

/** What owners have answered. */
@ApplicationScoped
@Transactional
public class ReadConsents {

  private final ConsentRows consents;

  ReadConsents(ConsentRows consents) {
    this.consents = consents;
  }

  /** The answers for these Masses, by Mass, then code; who has not been asked is not among them. */
  public List<Consent> ofMasses(Collection<MassId> masses) {
    return consents.ofMasses(masses.stream().map(MassId::value).toList());
  }
}
