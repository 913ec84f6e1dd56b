package vestiary.plan;

import static vestiary.web.Speech.say;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Situation;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/** Masses that are new, gone, moved, or need other vestments than when a plan was made. */
final class MassesSince {

  private final Map<MassId, Set<Need>> then;
  private final Map<MassId, Set<Need>> today;
  private final Map<MassId, DatedMass> known;
  private final SinceWords words;

  MassesSince(SpanToCheck span, Situation before, Situation now, SinceWords words) {
    this.then = byMass(before.span().needs());
    this.today = byMass(now.span().needs());
    this.known =
        span.asked().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.words = words;
  }

  /** In the order in which the Masses were, new ones last. */
  List<SinceWords.Told> told() {
    return Stream.concat(then.keySet().stream(), today.keySet().stream())
        .distinct()
        .filter(mass -> !then.getOrDefault(mass, Set.of()).equals(today.get(mass)))
        .map(mass -> new SinceWords.Told(sentence(mass), true))
        .toList();
  }

  private String sentence(MassId mass) {
    Set<Need> before = then.getOrDefault(mass, Set.of());
    Set<Need> now = today.getOrDefault(mass, Set.of());
    if (before.isEmpty()) {
      return say("%s is new.", words.about(now.iterator().next()));
    }
    Need was = before.iterator().next();
    if (now.isEmpty()) {
      boolean there =
          Optional.ofNullable(known.get(mass)).filter(one -> !one.chosen().cancelled()).isPresent();
      return (there
              ? say("%s needs nothing any more.")
              : say("%s is cancelled, or moved to other days."))
          .formatted(words.about(was));
    }
    Need is = now.iterator().next();
    if (!was.church().equals(is.church())) {
      return say("%s has moved to %s.", words.about(was), words.church(is.church()));
    }
    if (!was.window().start().equals(is.window().start())) {
      return say(
          "%s has moved to %s.",
          words.about(was), words.after(was.window().start(), is.window().start()));
    }
    return say("%s needs other vestments than before, or for longer or shorter.", words.about(is));
  }

  private static Map<MassId, Set<Need>> byMass(List<Need> needs) {
    return needs.stream()
        .collect(
            Collectors.groupingBy(
                Need::mass, LinkedHashMap::new, Collectors.toCollection(LinkedHashSet::new)));
  }
}
