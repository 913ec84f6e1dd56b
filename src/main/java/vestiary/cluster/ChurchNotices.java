package vestiary.cluster;

import java.util.List;

/** What another room has to say of a church to those who answer for its goods. */
public interface ChurchNotices {

  /** Whole sentences; empty where nothing need be said. */
  List<String> of(Church church);
}
