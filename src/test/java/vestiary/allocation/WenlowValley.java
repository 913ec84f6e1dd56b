package vestiary.allocation;

import static vestiary.calendar.Colour.GOLD;
import static vestiary.calendar.Colour.GREEN;
import static vestiary.calendar.Colour.RED;
import static vestiary.calendar.Colour.ROSE;
import static vestiary.calendar.Colour.VIOLET;
import static vestiary.calendar.Colour.WHITE;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.vesting.Away;
import vestiary.vesting.Brings;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassColour;
import vestiary.vesting.MassId;
import vestiary.vesting.MassTime;
import vestiary.vesting.Ministers;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Sacristy;
import vestiary.vesting.VestedMass;
import vestiary.vesting.VestingNorms;
import vestiary.vesting.VestingPolicies;

/**
 * An invented cluster of six churches, its vestments and its Advent of 2026. No source: everything
 * in it is made up.
 */
public final class WenlowValley {

  public static final ChurchId HT = church(1);
  public static final ChurchId SA = church(2);
  public static final ChurchId SJ = church(3);
  public static final ChurchId OL = church(4);
  public static final ChurchId PP = church(5);
  public static final ChurchId SM = church(6);

  public static final Map<ChurchId, String> CODES =
      Map.of(HT, "HT", SA, "SA", SJ, "SJ", OL, "OL", PP, "PP", SM, "SM");

  private static final List<ChurchId> CHURCHES = List.of(HT, SA, SJ, OL, PP, SM);
  private static final int[][] MINUTES = {
    {0, 14, 18, 12, 26, 22},
    {14, 0, 20, 22, 28, 16},
    {18, 20, 0, 25, 15, 34},
    {12, 22, 25, 0, 36, 30},
    {26, 28, 15, 36, 0, 24},
    {22, 16, 34, 30, 24, 0}
  };
  private static final ZoneId ZONE = ZoneId.of("America/Chicago");
  private static final Sacristy SACRISTY =
      new Sacristy(Duration.ofMinutes(30), Duration.ofMinutes(15));

  private WenlowValley() {}

  public static ChurchId church(int number) {
    return new ChurchId(new UUID(0, number));
  }

  public static Instant at(String localDateTime) {
    return LocalDateTime.parse(localDateTime).atZone(ZONE).toInstant();
  }

  public static Journeys journeys() {
    return Journeys.of(
        IntStream.range(0, 36)
            .mapToObj(
                pair ->
                    new Journey(
                        CHURCHES.get(pair / 6),
                        CHURCHES.get(pair % 6),
                        Duration.ofMinutes(MINUTES[pair / 6][pair % 6])))
            .toList());
  }

  public static Span span(List<Piece> pieces, VestedMass... masses) {
    List<Need> needs =
        Stream.of(masses)
            .flatMap(mass -> VestingNorms.needsOf(mass, VestingPolicies.DEFAULTS).stream())
            .toList();
    return new Span(needs, pieces, journeys(), VestingPolicies.DEFAULTS);
  }

  public static VestedMass mass(
      ChurchId church, String start, int minutes, Colour colour, Ministers who) {
    return liturgy(MassKind.OF_THE_DAY, church, start, minutes, colour, who);
  }

  public static VestedMass liturgy(
      MassKind kind, ChurchId church, String start, int minutes, Colour colour, Ministers who) {
    boolean saturday = start.startsWith("2026-12-05") || start.startsWith("2026-12-12");
    boolean evening = start.compareTo(start.substring(0, 10) + "T16:00") >= 0;
    return new VestedMass(
        new MassId(UUID.nameUUIDFromBytes((CODES.get(church) + start).getBytes())),
        church,
        kind,
        new MassTime(
            at(start), Duration.ofMinutes(minutes), !saturday || evening, SACRISTY, Duration.ZERO),
        new MassColour(colour, colour == ROSE, false),
        who);
  }

  public static Ministers priestAlone() {
    return concelebrants(0);
  }

  public static Ministers concelebrants(int number) {
    return new Ministers(false, number, 0, List.of());
  }

  public static Brings hisOwn(Role role, PieceKind... kinds) {
    return new Brings(role, 1, Set.of(kinds));
  }

  /** Every chasuble, stole, dalmatic, cope and humeral veil of the six churches. */
  public static List<Piece> stock() {
    List<Piece> pieces = new ArrayList<>();
    sets(pieces, WHITE, 3, 3, 2, 2, 1, 1);
    sets(pieces, RED, 3, 2, 1, 1, 1, 1);
    sets(pieces, GREEN, 4, 3, 2, 2, 2, 1);
    sets(pieces, VIOLET, 4, 2, 2, 2, 1, 1);
    sets(pieces, ROSE, 1, 0, 0, 0, 0, 0);
    addSet(pieces, "HT-W4", GOLD, HT, true, List.of());
    addSet(pieces, "PP-R2", RED, PP, true, List.of());
    dalmatics(pieces, WHITE, 2, 1, 0, 1, 0, 0);
    dalmatics(pieces, RED, 1, 0, 0, 0, 0, 0);
    dalmatics(pieces, VIOLET, 1, 0, 0, 0, 0, 0);
    pieces.add(piece("HT-C1", PieceKind.COPE, WHITE, HT));
    pieces.add(piece("SA-C1", PieceKind.COPE, WHITE, SA));
    pieces.add(piece("HT-H1", PieceKind.HUMERAL_VEIL, WHITE, HT));
    pieces.add(piece("SA-H1", PieceKind.HUMERAL_VEIL, WHITE, SA));
    return pieces;
  }

  public static Piece piece(String code, PieceKind kind, Colour colour, ChurchId home) {
    return new Piece(code, kind, List.of(colour), home, false, "", List.of());
  }

  public static List<String> codes(List<Piece> pieces) {
    return pieces.stream().map(Piece::code).toList();
  }

  private static void sets(List<Piece> pieces, Colour colour, int... numbers) {
    for (int church = 0; church < numbers.length; church++) {
      for (int number = 1; number <= numbers[church]; number++) {
        ChurchId home = CHURCHES.get(church);
        String code = CODES.get(home) + "-" + letter(colour) + number;
        addSet(pieces, code, colour, home, false, away(code));
      }
    }
  }

  private static String letter(Colour colour) {
    return colour == ROSE ? "P" : colour.name().substring(0, 1);
  }

  private static void addSet(
      List<Piece> pieces, String set, Colour colour, ChurchId home, boolean stays, List<Away> out) {
    List<Colour> colours = List.of(colour);
    pieces.add(new Piece(set + "-C", PieceKind.CHASUBLE, colours, home, stays, set, out));
    pieces.add(new Piece(set + "-S", PieceKind.STOLE, colours, home, stays, set, out));
  }

  private static void dalmatics(List<Piece> pieces, Colour colour, int... numbers) {
    for (int church = 0; church < numbers.length; church++) {
      for (int number = 1; number <= numbers[church]; number++) {
        ChurchId home = CHURCHES.get(church);
        String set = CODES.get(home) + "-D" + letter(colour) + number;
        List<Colour> colours = List.of(colour);
        List<Away> out = away(set);
        pieces.add(new Piece(set + "-D", PieceKind.DALMATIC, colours, home, false, set, out));
        pieces.add(new Piece(set + "-S", PieceKind.DEACON_STOLE, colours, home, false, set, out));
      }
    }
  }

  private static List<Away> away(String set) {
    return switch (set) {
      case "SA-W3" ->
          List.of(new Away(at("2026-11-27T09:00"), at("2026-12-12T09:00"), "at the cleaner"));
      case "SJ-W2" ->
          List.of(new Away(at("2026-11-20T09:00"), at("2026-12-18T09:00"), "lining being mended"));
      case "OL-DW1" -> List.of(new Away(at("2026-11-13T09:00"), Instant.MAX, "on loan, overdue"));
      default -> List.of();
    };
  }
}
