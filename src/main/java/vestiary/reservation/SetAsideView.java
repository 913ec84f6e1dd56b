package vestiary.reservation;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * What can be had for one Mass, to be ticked.
 *
 * @param over for example "Ordination, white"
 * @param title the Mass
 * @param lead how much is free, and from when to when it would be taken
 * @param problem what kept the last press from being done; may be empty
 * @param carried what says which Mass it is
 * @param held what is set aside for it already
 * @param wish how many of what kind and colour are to be proposed
 * @param proposal what came of that; empty while nothing was asked
 * @param churchId of the church of the Mass
 */
record SetAsideView(
    Frame frame,
    String over,
    String title,
    String lead,
    String problem,
    List<Link> turn,
    List<Hidden> carried,
    List<HeldView.Line> held,
    Wish wish,
    String proposal,
    List<Group> groups,
    String churchId) {

  SetAsideView {
    turn = List.copyOf(turn);
    carried = List.copyOf(carried);
    held = List.copyOf(held);
    groups = List.copyOf(groups);
  }

  /**
   * @param matching whether all of one suit are wanted
   */
  record Wish(Field number, Choice kind, Choice colour, boolean matching) {}

  /**
   * Things of one kind.
   *
   * @param open whether they are shown without a press
   */
  record Group(String title, boolean open, List<Ware> free, List<Ware> kept) {
    Group {
      free = List.copyOf(free);
      kept = List.copyOf(kept);
    }

    /** For example "Five more are not to be had". */
    public String keptTitle() {
      return ReservationWords.notToBeHad(kept.size());
    }
  }

  /**
   * A set or a piece.
   *
   * @param name under which the form sends its code: set or piece
   * @param what pieces, suit, grade and size
   * @param about where it lies, or why it cannot be had
   * @param takes what plans lose by it; may be empty
   * @param ask where it can be asked for; without an address where that makes no sense
   */
  record Ware(
      String name,
      String code,
      boolean ticked,
      Ribbon ribbon,
      String what,
      String about,
      String takes,
      Link ask) {}
}
