package vestiary.own;

import java.util.List;
import vestiary.plan.TripView;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * What concerns whoever asks.
 *
 * @param title their name, as people call them
 * @param lead how much there is, or that nobody is named for them
 * @param absences when the person is away, as far as it is known; none for nobody
 * @param masses by the hour
 * @param trips by the hour of leaving
 */
record OwnView(
    Frame frame,
    String title,
    String lead,
    List<Link> turn,
    List<String> absences,
    List<Own> masses,
    List<TripView> trips) {

  OwnView {
    turn = List.copyOf(turn);
    absences = List.copyOf(absences);
    masses = List.copyOf(masses);
    trips = List.copyOf(trips);
  }

  /**
   * One Mass or other liturgy.
   *
   * @param moment for example "Tuesday 8 December, 18:30"
   * @param mark severity of the clash where the person is away then; empty where not
   * @param deed what is done there, for example "You celebrate"; or that the person is away then
   * @param what the Mass itself, for example "of Sunday, Second Sunday of Advent"
   * @param wears what is worn, with the pieces where a plan names them; empty if nothing is said
   * @param mass where the Mass stands
   * @param vesture where it stands what everybody wears
   */
  record Own(
      String moment,
      String church,
      String mark,
      String deed,
      String what,
      Ribbon ribbon,
      String wears,
      String mass,
      String vesture) {}
}
