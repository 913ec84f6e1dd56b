package vestiary.allocation.plan;

import java.util.Objects;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Window;

/**
 * A piece that a sacristan has set aside for a Mass. It serves that Mass and the planner moves
 * everything else around it.
 *
 * @param piece its code
 * @param mass the Mass, asked about in this span or not
 * @param window how long it is needed there
 */
public record Hold(String piece, MassId mass, ChurchId church, Window window) {

  public Hold {
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(mass, "mass");
    Objects.requireNonNull(church, "church");
    Objects.requireNonNull(window, "window");
  }
}
