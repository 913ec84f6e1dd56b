package vestiary.web;

import java.time.ZoneId;

/**
 * What the frame says of the cluster. This room knows no feature, so a feature that knows the
 * cluster answers it.
 */
public interface FrameFacts {

  /** The facts as they stand for the cluster of the present request. */
  Facts read();

  /**
   * @param cluster its name; empty until it is set up, and to whoever may not see it
   * @param churches 0 or more
   * @param zone by whose clock the page is printed
   * @param visitor the name of whoever has signed in; empty for nobody
   * @param overseer whether the visitor is one of another cluster
   */
  record Facts(
      String cluster,
      int churches,
      Frame.Demo demo,
      ZoneId zone,
      String visitor,
      boolean overseer) {}
}
