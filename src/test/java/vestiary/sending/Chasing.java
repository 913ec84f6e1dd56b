package vestiary.sending;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import vestiary.scenario.Scenario;

/** Notes that somebody was written to about what is overdue, as the job does. */
@ApplicationScoped
public class Chasing {

  private final Scenario scenario;
  private final ReadSent sent;
  private final OverdueMailRows mails;

  Chasing(Scenario scenario, ReadSent sent, OverdueMailRows mails) {
    this.scenario = scenario;
    this.sent = sent;
    this.mails = mails;
  }

  /** About the first that is overdue in the default cluster. */
  public void note() {
    scenario.within(
        scenario.ours(),
        () -> {
          OverdueMailRow row = new OverdueMailRow();
          row.sendingId = sent.overdue().get(0).sending();
          row.day = LocalDate.of(2026, 11, 28);
          mails.persistAndFlush(row);
        });
  }
}
