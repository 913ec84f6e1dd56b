package vestiary.schedule;

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
import vestiary.web.English;
import vestiary.web.Link;

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
        ? "No Mass to come is touched."
        : English.sentence(English.list(said)) + ".";
  }

  private static String counted(Effect.Kind kind, int count) {
    boolean one = count == 1;
    String verb =
        switch (kind) {
          case MOVES -> one ? "moves" : "move";
          case CHANGES -> one ? "changes" : "change";
          case GOES -> one ? "is no longer said" : "are no longer said";
          case COMES -> one ? "is new" : "are new";
          default -> one ? "stays as it is" : "stay as they are";
        };
    return English.count(count, "Mass") + " " + verb;
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
        kind == Effect.Kind.STAYS ? ", since somebody entered or changed them by hand" : "";
    int left = effects.size() - SHOWN;
    return new EffectsView.Group(
        English.sentence(counted(kind, effects.size()) + why),
        effects.stream().limit(SHOWN).map(lines::line).toList(),
        left > 0
            ? "And %s, the last on %s."
                .formatted(
                    English.count(left) + " more",
                    English.dateAndYear(effects.get(effects.size() - 1).date()))
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
      String cancelled = mass.cancelled ? ", cancelled" : "";
      return new EffectsView.Line(
          new Link(moment(now) + cancelled, "/masses/" + mass.id),
          effect.kind() == Effect.Kind.MOVES ? becomes(mass, now, next) : "");
    }

    private String becomes(MassRow mass, ZonedDateTime now, ZonedDateTime next) {
      List<String> words = new ArrayList<>();
      if (!now.toLocalDate().equals(next.toLocalDate())) {
        words.add("to " + moment(next));
      } else if (!now.equals(next)) {
        words.add("to " + English.clock(next));
      }
      if (!mass.churchId.equals(then.churchId)) {
        words.add("to " + churches.get(then.churchId).name());
      }
      if (mass.minutes != then.minutes) {
        words.add("%d minutes long".formatted(then.minutes));
      }
      return String.join(", ", words);
    }

    private static String moment(ZonedDateTime time) {
      LocalDate date = time.toLocalDate();
      return "%s %d, %s".formatted(English.day(date), date.getYear(), English.clock(time));
    }
  }
}
