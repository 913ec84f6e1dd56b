package vestiary.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.cluster.Church;
import vestiary.pool.PoolView.Cell;
import vestiary.pool.PoolView.Row;
import vestiary.pool.PoolView.Tally;
import vestiary.vesting.ChurchId;
import vestiary.vesting.PieceKind;

class PoolTallyTest {

  private static final Instant NOW = Instant.parse("2026-12-01T12:00:00Z");

  private final Church trinity = church("ht", "Holy Trinity");
  private final Church anne = church("sa", "Saint Anne");

  @Test
  void every_row_and_every_column_adds_up_to_the_same_total() {
    List<PooledPiece> pieces =
        List.of(
            chasuble("1", trinity, Colour.WHITE),
            chasuble("2", trinity, Colour.RED),
            chasuble("3", anne, Colour.WHITE),
            chasuble("4", anne, Colour.WHITE));

    Tally tally = new PoolTally(pieces, NOW).of(List.of(trinity, anne));

    assertEquals(List.of(3, 1), tally.sums());
    assertEquals(List.of(2, 2), tally.rows().stream().map(Row::sum).toList());
    assertEquals(4, tally.total());
  }

  @Test
  void a_chasuble_in_care_now_is_away_and_still_counted() {
    Care now = care("2026-11-30T00:00:00Z", "2026-12-02T00:00:00Z");
    Care over = care("2026-11-01T00:00:00Z", "2026-12-01T12:00:00Z");
    Care later = care("2026-12-01T12:00:01Z", "2026-12-24T00:00:00Z");
    List<PooledPiece> pieces =
        List.of(
            chasuble("1", trinity, Colour.WHITE, now),
            chasuble("2", trinity, Colour.WHITE, over),
            chasuble("3", trinity, Colour.WHITE, later));

    Cell white = new PoolTally(pieces, NOW).of(List.of(trinity)).rows().get(0).cells().get(0);

    assertEquals(2, white.ready());
    assertEquals(1, white.away());
    assertEquals(3, white.sum());
  }

  @Test
  void gold_counts_as_what_it_is_and_not_as_what_it_may_serve_as() {
    PooledPiece gold = piece("1", PieceKind.CHASUBLE, trinity, List.of(Colour.GOLD, Colour.WHITE));

    Tally tally = new PoolTally(List.of(gold), NOW).of(List.of(trinity));

    assertEquals(List.of(Colour.GOLD), tally.heads().stream().map(h -> h.colour()).toList());
  }

  @Test
  void stoles_alone_are_no_tally() {
    PooledPiece stole = piece("1", PieceKind.STOLE, trinity, List.of(Colour.WHITE));

    assertEquals(Tally.NONE, new PoolTally(List.of(stole), NOW).of(List.of(trinity)));
  }

  private static PooledPiece chasuble(String code, Church home, Colour colour, Care... care) {
    return piece(code, PieceKind.CHASUBLE, home, List.of(colour), care);
  }

  private static PooledPiece piece(
      String code, PieceKind kind, Church home, List<Colour> colours, Care... care) {
    return new PooledPiece(
        code,
        kind,
        colours,
        "",
        "",
        "",
        "",
        "",
        "",
        home.id(),
        home.parish(),
        OwnerPolicy.FREELY,
        "",
        "",
        false,
        Set.of(),
        List.of(care),
        0,
        Particulars.NONE,
        List.of());
  }

  private static Care care(String from, String end) {
    return new Care(
        UUID.randomUUID(), "1", Instant.parse(from), List.of(Instant.parse(end)), "Cleaner");
  }

  private static Church church(String slug, String name) {
    return new Church(
        new ChurchId(UUID.randomUUID()),
        slug,
        name,
        name,
        "",
        "",
        List.of(),
        List.of(),
        Duration.ofMinutes(30),
        Duration.ofMinutes(15),
        List.of(),
        0);
  }
}
