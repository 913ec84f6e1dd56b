package vestiary.schedule;

import java.time.LocalDate;
import java.util.Optional;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;

/** What a Mass is held against: asked anew for one, read once for many. */
interface MassSurroundings {

  Cluster cluster();

  /** The church of that short name; empty if there is none. */
  Optional<Church> findChurch(String slug);

  /** The first date without Mass; empty while it is open. */
  Optional<LocalDate> findClosing(Church church);

  LiturgicalCalendar calendar(Church church);
}
