package vestiary.feed;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import vestiary.cluster.Cluster;
import vestiary.cluster.Journey;
import vestiary.plan.PlanResult;
import vestiary.plan.TripWords;
import vestiary.schedule.DatedMass;
import vestiary.telling.Tongue;
import vestiary.vesting.ChurchId;

/** Journeys as events: a celebrant's from one Mass to the next, and those of vestments. */
final class JourneyEvents {

  private final Cluster cluster;
  private final Tongue tongue;

  JourneyEvents(Cluster cluster, Tongue tongue) {
    this.cluster = cluster;
    this.tongue = tongue;
  }

  /**
   * Between two Masses of one day in two churches, as far as the way is known. Its UID is that of
   * the Mass that it leads to.
   *
   * @param masses one person's, by start, cancelled ones left out
   */
  List<CalendarEvent> drives(List<DatedMass> masses, List<Journey> journeys) {
    List<CalendarEvent> drives = new ArrayList<>();
    for (int i = 1; i < masses.size(); i++) {
      DatedMass from = masses.get(i - 1);
      DatedMass to = masses.get(i);
      if (from.date().equals(to.date()) && !from.church().id().equals(to.church().id())) {
        minutes(from.church().id(), to.church().id(), journeys)
            .map(minutes -> drive(from, to, minutes))
            .ifPresent(drives::add);
      }
    }
    return drives;
  }

  private static Optional<Integer> minutes(ChurchId from, ChurchId to, List<Journey> journeys) {
    return journeys.stream()
        .filter(one -> one.from().equals(from) && one.to().equals(to))
        .map(Journey::minutes)
        .findFirst();
  }

  private CalendarEvent drive(DatedMass from, DatedMass to, int minutes) {
    ZonedDateTime leave = to.start().minusMinutes(minutes);
    return event(
        "%s-drive".formatted(to.id().value()),
        leave,
        to.start(),
        tongue.say("feed.drive", to.church().name(), minutes, tongue.clock(leave)),
        from.church().name(),
        tongue.say("feed.drive.more", tongue.clock(from.end()), tongue.clock(to.start())));
  }

  /**
   * What leaves these churches, what comes to them, and what of theirs rides between others. A
   * journey is known again by its way, its day and its turn on that day.
   *
   * @param trips by the hour of leaving
   * @param theirs codes of the pieces at home there
   */
  List<CalendarEvent> rides(
      List<PlanResult.Trip> trips, Set<UUID> churches, Set<String> theirs, TripWords words) {
    Map<String, Integer> turns = new HashMap<>();
    List<CalendarEvent> rides = new ArrayList<>();
    for (PlanResult.Trip trip : trips) {
      String way =
          "%s %s %s".formatted(trip.from(), trip.to(), local(trip.leaveBy()).toLocalDate());
      int turn = turns.merge(way, 1, Integer::sum);
      if (churches.contains(trip.from())
          || churches.contains(trip.to())
          || trip.pieces().stream().anyMatch(theirs::contains)) {
        rides.add(ride(trip, "%s %d".formatted(way, turn), words));
      }
    }
    return rides;
  }

  private CalendarEvent ride(PlanResult.Trip trip, String which, TripWords words) {
    String pieces = tongue.list(words.names(trip.pieces()));
    return event(
        UUID.nameUUIDFromBytes(which.getBytes(StandardCharsets.UTF_8)) + "-ride",
        local(trip.leaveBy()),
        local(trip.arriveBy()),
        tongue.say("feed.ride", pieces, words.church(trip.from()), words.church(trip.to())),
        words.church(trip.from()),
        tongue.sentence(
                trip.carrier().isEmpty()
                    ? tongue.say("trip.alone", pieces)
                    : tongue.say("trip.with", pieces, tongue.carrier(trip.carrier())))
            + ".");
  }

  private CalendarEvent event(
      String uid,
      ZonedDateTime start,
      ZonedDateTime end,
      String summary,
      String place,
      String description) {
    return new CalendarEvent(
        "%s@%s".formatted(uid, cluster.id()),
        0,
        Instant.EPOCH,
        start,
        end,
        summary,
        place,
        description,
        false,
        true);
  }

  private ZonedDateTime local(Instant moment) {
    return moment.atZone(cluster.zone());
  }
}
