package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Says in words what a change of a pattern does to its Masses. */
@ApplicationScoped
class EffectsSheet {

  private static final int SHOWN = 12;

  private final ReadCluster cluster;
  private final TouchedThings touched;

  EffectsSheet(ReadCluster cluster, TouchedThings touched) {
    this.cluster = cluster;
    this.touched = touched;
  }

  /** What was looked at, in one word: the same effects give the same word. */
  static String seen(List<Effect> effects) {
    int word = 7;
    for (Effect effect : effects) {
      UUID mass = effect.mass() == null ? null : effect.mass().id;
      int version = effect.mass() == null ? 0 : effect.mass().version;
      word = 31 * word + Objects.hash(effect.kind().ordinal(), effect.date(), mass, version);
    }
    return Integer.toHexString(word);
  }

  /** How much is touched: "Twelve Masses move, two stay as they are." */
  static String lead(List<Effect> effects) {
    Map<Effect.Kind, List<Effect>> kinds = byKind(effects);
    List<String> said = new ArrayList<>();
    Stream.of(Effect.Kind.values())
        .filter(kind -> kind != Effect.Kind.SAME && kinds.containsKey(kind))
        .forEach(kind -> said.add(counted(kind, kinds.get(kind).size())));
    return said.isEmpty()
        ? say("No Mass to come is touched.")
        : Speech.sentence(Speech.list(said)) + ".";
  }

  private static String counted(Effect.Kind kind, int count) {
    boolean one = count == 1;
    String masses = Speech.count(count, "Mass");
    return switch (kind) {
      case MOVES -> one ? say("%1$s moves", masses) : say("%1$s move", masses);
      case CHANGES -> one ? say("%s changes", masses) : say("%s change", masses);
      case GOES -> one ? say("%s is no longer said", masses) : say("%s are no longer said", masses);
      case COMES -> one ? say("%s is new", masses) : say("%s are new", masses);
      default -> one ? say("%s stays as it is", masses) : say("%s stay as they are", masses);
    };
  }

  /**
   * The Masses by what happens to them.
   *
   * @param then the pattern as it is to be
   */
  List<EffectsView.Group> groups(List<Effect> effects, PatternRow then) {
    Map<Effect.Kind, List<Effect>> kinds = byKind(effects);
    Lines lines = new Lines(then, cluster.cluster().zone(), churches());
    return Stream.of(Effect.Kind.values())
        .filter(kind -> kind != Effect.Kind.SAME && kinds.containsKey(kind))
        .map(kind -> group(kind, kinds.get(kind), lines))
        .toList();
  }

  /** Which vestments, ministers and holds are touched. */
  List<String> touched(List<Effect> effects) {
    return touched.by(
        effects.stream()
            .filter(e -> e.kind() == Effect.Kind.MOVES || e.kind() == Effect.Kind.GOES)
            .map(Effect::mass)
            .toList());
  }

  private static EffectsView.Group group(Effect.Kind kind, List<Effect> effects, Lines lines) {
    String why =
        kind == Effect.Kind.STAYS ? say(", since somebody entered or changed them by hand") : "";
    int left = effects.size() - SHOWN;
    return new EffectsView.Group(
        Speech.sentence(counted(kind, effects.size()) + why),
        effects.stream().limit(SHOWN).map(lines::line).toList(),
        left > 0
            ? say(
                "And %s, the last on %s.",
                Speech.count(left, "Mass", say("more")),
                Speech.dateAndYear(effects.get(effects.size() - 1).date()))
            : "");
  }

  private Map<UUID, Church> churches() {
    return cluster.churches().stream()
        .collect(Collectors.toMap(c -> c.id().value(), Function.identity()));
  }

  private static Map<Effect.Kind, List<Effect>> byKind(List<Effect> effects) {
    return effects.stream()
        .collect(
            Collectors.groupingBy(
                Effect::kind, () -> new EnumMap<>(Effect.Kind.class), Collectors.toList()));
  }

  /** One line a Mass. */
  private record Lines(PatternRow then, ZoneId zone, Map<UUID, Church> churches) {

    EffectsView.Line line(Effect effect) {
      MassRow mass = effect.mass();
      ZonedDateTime next = then.start(effect.date(), zone).atZone(zone);
      if (mass == null) {
        return new EffectsView.Line(new Link(moment(next), ""), "");
      }
      ZonedDateTime now = mass.starts.atZone(zone);
      String cancelled = mass.cancelled ? say(", cancelled") : "";
      return new EffectsView.Line(
          new Link(moment(now) + cancelled, "/masses/" + mass.id),
          effect.kind() == Effect.Kind.MOVES ? becomes(mass, now, next) : "");
    }

    private String becomes(MassRow mass, ZonedDateTime now, ZonedDateTime next) {
      List<String> words = new ArrayList<>();
      if (!now.toLocalDate().equals(next.toLocalDate())) {
        words.add(
            say(
                "to %s %d, %s",
                Speech.day(next.toLocalDate()), next.getYear(), Speech.clock(next)));
      } else if (!now.equals(next)) {
        words.add(say("to %1$s", Speech.clock(next)));
      }
      if (!mass.churchId.equals(then.churchId)) {
        words.add(say("to ") + churches.get(then.churchId).name());
      }
      if (mass.minutes != then.minutes) {
        words.add(say("%d minutes long", then.minutes));
      }
      return String.join(", ", words);
    }

    private static String moment(ZonedDateTime time) {
      LocalDate date = time.toLocalDate();
      return say("%s %d, %s", Speech.day(date), date.getYear(), Speech.clock(time));
    }
  }
}
