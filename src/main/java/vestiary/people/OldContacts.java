package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** Forgets how people are written to who serve no more. */
@ApplicationScoped
public class OldContacts {

  private final PersonMailRows mails;

  OldContacts(PersonMailRows mails) {
    this.mails = mails;
  }

  /**
   * How many addresses that is.
   *
   * @param serving ids of people who do
   * @param before addresses entered since then are left alone
   */
  public long count(Set<UUID> serving, Instant before) {
    return old(serving, before).size();
  }

  @Transactional
  public void forget(Set<UUID> serving, Instant before) {
    old(serving, before).forEach(mails::delete);
  }

  private List<PersonMailRow> old(Set<UUID> serving, Instant before) {
    return mails.list("keptAt < ?1", before).stream()
        .filter(row -> !serving.contains(row.id))
        .toList();
  }
}
