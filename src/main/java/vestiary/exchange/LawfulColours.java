package vestiary.exchange;

import java.time.LocalDate;
import java.util.List;
import vestiary.calendar.Colour;

/** What the words of the demonstration lists ask of the calendar. */
@FunctionalInterface
public interface LawfulColours {

  /**
   * The colours of the celebration kept in that church on that day, its first colour first.
   *
   * @param church slug of the church
   * @return empty on a day on which no large liturgy of one's own choice is set: one whose evening
   *     belongs to the next day, and Holy Thursday to Holy Saturday
   */
  List<Colour> on(LocalDate day, String church);
}
