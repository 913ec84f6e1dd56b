package vestiary.allocation;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;

/**
 * Finds where needs are more than the pieces that can serve them in time. Each kind of piece is
 * counted by itself: a set is but a label here.
 *
 * <p>Every finding carries what shows it. Once those who go without are left out of all findings,
 * the pieces suffice for the others, unless a search has to give up: then nothing is claimed.
 */
public final class ClashCheck {

  private static final Comparator<Shortage> CANONICAL =
      Comparator.comparing((Shortage shortage) -> shortage.needs().get(0).window().start())
          .thenComparing(shortage -> shortage.needs().get(0).church())
          .thenComparing(Shortage::pieceKind)
          .thenComparing(Shortage::level)
          .thenComparing(shortage -> shortage.needs().get(0))
          .thenComparing(Shortage::needed);

  private ClashCheck() {}

  /**
   * All findings of a span, by start of the first Mass, church, kind and level; the same for the
   * same span, in whatever order it is given. Empty if nothing falls short.
   */
  public static List<Shortage> find(Span span) {
    Map<PieceKind, List<Need>> byKind =
        span.needs().stream()
            .sorted()
            .collect(
                Collectors.groupingBy(
                    Need::kind, () -> new EnumMap<>(PieceKind.class), Collectors.toList()));
    Stream<Shortage> all =
        byKind.entrySet().stream().flatMap(kind -> find(kind.getKey(), kind.getValue(), span));
    return Supersession.apply(all.toList()).stream().sorted(CANONICAL).toList();
  }

  private static Stream<Shortage> find(PieceKind kind, List<Need> needs, Span span) {
    Pool pool = new Pool(span, kind);
    return Nights.part(needs, span.journeys()).stream()
        .flatMap(part -> new KindCheck(pool, part, span).find().stream());
  }
}
