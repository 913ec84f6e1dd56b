package vestiary.pool;

import java.util.List;

/** What is planned and what is set aside over some time, care left aside; by start, then code. */
public record Taken(List<PlannedWear> planned, List<SetAside> setAside) {

  /** Nothing at all. */
  public static final Taken NOTHING = new Taken(List.of(), List.of());

  public Taken {
    planned = List.copyOf(planned);
    setAside = List.copyOf(setAside);
  }
}
