package vestiary.plan;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The journeys of a week, driver by driver, for those who drive.
 *
 * @param lead how many they are; or that nothing is carried
 * @param toTakeHome what lies away from home in the end of the week
 */
public record MovementsView(
    Frame frame,
    String title,
    List<Link> turn,
    String lead,
    List<Driver> drivers,
    List<RestingView> toTakeHome) {

  public MovementsView {
    turn = List.copyOf(turn);
    drivers = List.copyOf(drivers);
    toTakeHome = List.copyOf(toTakeHome);
  }

  /**
   * @param name of who drives that way anyway, or that somebody is to be asked
   * @param trips by the hour of leaving
   */
  public record Driver(String name, List<TripView> trips) {
    public Driver {
      trips = List.copyOf(trips);
    }
  }
}
