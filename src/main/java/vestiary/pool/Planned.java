package vestiary.pool;

import java.util.List;

/** All that is planned over some time: who wears what, and what is carried. */
public record Planned(List<PlannedWear> worn, List<CarriedPiece> carried) {

  /** Nothing at all. */
  public static final Planned NOTHING = new Planned(List.of(), List.of());

  public Planned {
    worn = List.copyOf(worn);
    carried = List.copyOf(carried);
  }
}
