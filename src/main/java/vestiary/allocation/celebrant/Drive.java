package vestiary.allocation.celebrant;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.allocation.Journeys;
import vestiary.vesting.ChurchId;

/**
 * The minutes that one priest drives for what he does on one counted day: date by date from home to
 * the first, from each to the next, and home again. Where his home is not known, from the first to
 * the last; a way that is not known counts nothing.
 */
final class Drive {

  private final Journeys journeys;

  Drive(Journeys journeys) {
    this.journeys = journeys;
  }

  long minutes(Priest priest, Collection<Stay> stays) {
    Map<LocalDate, List<Stay>> byDate =
        stays.stream()
            .collect(Collectors.groupingBy(Stay::date, TreeMap::new, Collectors.toList()));
    return byDate.values().stream().mapToLong(day -> ofDate(priest, day)).sum();
  }

  private long ofDate(Priest priest, List<Stay> stays) {
    List<ChurchId> churches =
        stays.stream().sorted(Comparator.comparing(Stay::start)).map(Stay::church).toList();
    long minutes = 0;
    for (int place = 1; place < churches.size(); place++) {
      minutes += minutes(churches.get(place - 1), churches.get(place));
    }
    Optional<ChurchId> home = priest.findHome();
    return home.isEmpty()
        ? minutes
        : minutes
            + minutes(home.get(), churches.get(0))
            + minutes(churches.get(churches.size() - 1), home.get());
  }

  private long minutes(ChurchId from, ChurchId to) {
    return journeys.find(from, to).map(Duration::toMinutes).orElse(0L);
  }
}
