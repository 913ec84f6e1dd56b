package vestiary.telling;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.allocation.Shortage;
import vestiary.cluster.Church;
import vestiary.plan.PlanResult;
import vestiary.planning.Clash;
import vestiary.pool.PlannedWear;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Window;

/**
 * What some days ask of the sacristans of one church, as it is compared with what they were told.
 * People are left out, so that nothing of it has to be forgotten with them.
 *
 * @param masses by start
 * @param rides what leaves the church and what comes to it, by the hour of leaving
 * @param troubles what cannot stand at its Masses, by the start of the first of them
 */
record ChurchWeek(List<AtMass> masses, List<Ride> rides, List<Trouble> troubles) {

  ChurchWeek {
    masses = List.copyOf(masses);
    rides = List.copyOf(rides);
    troubles = List.copyOf(troubles);
  }

  /**
   * @param colour its id
   * @param lay what plans name, sets by their own code
   * @param held what somebody has set aside, likewise
   */
  record AtMass(
      UUID mass,
      Instant starts,
      Instant setOut,
      String colour,
      List<String> lay,
      List<String> held) {
    AtMass {
      lay = List.copyOf(lay);
      held = List.copyOf(held);
    }
  }

  /**
   * @param trip another for another carrier
   * @param other the church where it goes to, or comes from
   * @param by when it leaves here at the latest, or is here at the latest
   */
  record Ride(UUID trip, boolean leaves, UUID other, List<String> pieces, Instant by) {
    Ride {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * @param kind id of the kind of clash
   * @param starts of the first of the church's own Masses that it concerns
   * @param piece id of the kind of piece that is short; empty where pieces play no part
   * @param colour id of the colour that is short; empty likewise
   * @param needed how many of these are asked for at that hour; 0 where pieces play no part
   * @param there how many of these can be had; 0 likewise
   */
  record Trouble(
      String clash,
      String kind,
      Instant starts,
      String piece,
      String colour,
      int needed,
      int there) {}

  /** That of a church in days that are loaded, with what cannot stand in them. */
  static ChurchWeek of(WeekSeen week, List<Clash> clashes, Church church) {
    UUID here = church.id().value();
    return new ChurchWeek(
        week.span().asked().stream()
            .filter(mass -> mass.church().id().equals(church.id()))
            .map(mass -> atMass(week, mass))
            .toList(),
        week.trips().stream().flatMap(trip -> rides(week, trip, here)).toList(),
        clashes.stream().flatMap(clash -> trouble(clash, church)).toList());
  }

  private static AtMass atMass(WeekSeen week, DatedMass mass) {
    Window window = Window.of(mass.toVestedMass(), week.span().cluster().policies().vesting());
    List<String> worn = week.worn(mass).stream().map(PlannedWear::piece).toList();
    return new AtMass(
        mass.id().value(),
        mass.start().toInstant(),
        window.setOut(),
        mass.colour().id(),
        week.names(worn),
        week.names(week.held(mass)));
  }

  private static Stream<Ride> rides(WeekSeen week, PlanResult.Trip trip, UUID here) {
    List<String> pieces = week.names(trip.pieces());
    List<Ride> rides = new ArrayList<>();
    if (trip.from().equals(here)) {
      rides.add(new Ride(trip.id(), true, trip.to(), pieces, trip.leaveBy()));
    }
    if (trip.to().equals(here)) {
      rides.add(new Ride(trip.id(), false, trip.from(), pieces, trip.arriveBy()));
    }
    return rides.stream();
  }

  private static Stream<Trouble> trouble(Clash clash, Church church) {
    return clash.masses().stream()
        .filter(mass -> mass.church().id().equals(church.id()))
        .limit(1)
        .map(
            mass ->
                new Trouble(
                    clash.id(),
                    clash.kind().id(),
                    mass.start().toInstant(),
                    clash.findProof().map(Shortage::pieceKind).map(kind -> kind.id()).orElse(""),
                    clash.findProof().map(Shortage::colour).map(c -> c.id()).orElse(""),
                    clash.findProof().map(Shortage::needed).orElse(0),
                    clash.findProof().map(Shortage::available).orElse(0)));
  }
}
