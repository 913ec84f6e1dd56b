package vestiary.calendar;

import java.util.Objects;

/** A general or national calendar that can be chosen, with the options it begins with. */
public record OfferedCalendar(String id, LocalName name, CalendarSettings defaults) {

  public OfferedCalendar {
    Objects.requireNonNull(name);
    if (!id.equals(defaults.calendar())) {
      throw new IllegalArgumentException("The defaults of " + id + " belong to another calendar.");
    }
  }
}
