package vestiary.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.vesting.FurtherMinisters;
import vestiary.vesting.Role;

/** Counts those who vest besides celebrants and deacons as at least those who are named. */
final class AtLeastNamed {

  private AtLeastNamed() {}

  /** The numbers that were said, raised where more are named, and those of whom only names are. */
  static List<FurtherMinisters> of(List<FurtherMinisters> said, List<WhoServes> serving) {
    Map<Role, Long> named =
        serving.stream()
            .flatMap(one -> one.as().findVests().stream())
            .collect(
                Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
    List<FurtherMinisters> all = new ArrayList<>();
    for (FurtherMinisters one : said) {
      long others =
          said.stream()
              .filter(other -> other != one && other.role() == one.role())
              .mapToInt(FurtherMinisters::count)
              .sum();
      Long least = named.remove(one.role());
      int count = least == null ? one.count() : Math.max(one.count(), (int) (least - others));
      all.add(new FurtherMinisters(one.role(), count, one.sizes()));
    }
    named.forEach(
        (role, count) -> all.add(new FurtherMinisters(role, count.intValue(), List.of())));
    return List.copyOf(all);
  }
}
