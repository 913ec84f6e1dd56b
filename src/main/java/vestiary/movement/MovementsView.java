package vestiary.movement;

import java.util.List;
import vestiary.plan.RestingView;
import vestiary.plan.TripView;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The journeys of a week, driver by driver, for those who drive.
 *
 * @param lead how many they are; or that nothing is carried
 * @param setAside where it stands what is set aside for the week's Masses
 * @param drivers those of whom nobody knows yet who drives, first
 * @param dropped who was asked for what is not carried any more, one sentence each
 * @param owners those who are to be asked, or were
 * @param toTakeHome what lies away from home in the end of the week
 */
public record MovementsView(
    Frame frame,
    String title,
    List<Link> turn,
    String lead,
    String setAside,
    List<Driver> drivers,
    List<Dropped> dropped,
    List<Owner> owners,
    List<RestingView> toTakeHome) {

  public MovementsView {
    turn = List.copyOf(turn);
    drivers = List.copyOf(drivers);
    dropped = List.copyOf(dropped);
    owners = List.copyOf(owners);
    toTakeHome = List.copyOf(toTakeHome);
  }

  /**
   * @param name of who drives, or that somebody is to be asked
   * @param trips by the hour of leaving
   */
  public record Driver(String name, List<TripView> trips) {
    public Driver {
      trips = List.copyOf(trips);
    }
  }

  public record Dropped(String sentence, Link more) {}

  /**
   * @param name whose the pieces are
   * @param sentence what goes where for which Mass, and how the asking stands
   */
  public record Owner(String name, String sentence, Link more) {}
}
