package vestiary.allocation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.calendar.Colour;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.LadderOrder;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Norm;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.VestingPolicies;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

/** Bare cases in minutes from nought: one need a Mass, windows that are the Masses, no turn. */
public final class Minutes {

  public static final ChurchId A = church(1);
  public static final ChurchId B = church(2);
  public static final ChurchId C = church(3);

  public static final VestingPolicies NO_TURN = withTurn(0);

  private Minutes() {}

  public static VestingPolicies withTurn(int minutes) {
    return new VestingPolicies(
        Duration.ZERO,
        Duration.ZERO,
        Duration.ZERO,
        Duration.ofMinutes(minutes),
        LadderOrder.STOLE,
        false);
  }

  public static ChurchId church(int number) {
    return new ChurchId(new UUID(0, number));
  }

  public static Instant minute(int minute) {
    return Instant.EPOCH.plusSeconds(60L * minute);
  }

  public static Need need(int mass, ChurchId church, int from, int until, Colour colour) {
    Window window = new Window(minute(from), minute(from), minute(until), minute(until));
    return need(mass, church, window, colour);
  }

  public static Need need(int mass, ChurchId church, Window window, Colour colour) {
    return new Need(
        new Wearer(new MassId(new UUID(1, mass)), Role.PRINCIPAL, 1),
        church,
        window,
        PieceKind.CHASUBLE,
        colour,
        false,
        new Norm(true, List.of(), "invented"));
  }

  public static Piece piece(String code, ChurchId home, Colour... colours) {
    return new Piece(code, PieceKind.CHASUBLE, List.of(colours), home, false, "", List.of());
  }

  public static Piece away(Piece piece, int from, int until) {
    List<Away> away = List.of(new Away(minute(from), minute(until), "held elsewhere"));
    return new Piece(
        piece.code(), piece.kind(), piece.colours(), piece.home(), false, piece.set(), away);
  }

  public static Journeys bothWays(int minutes, ChurchId one, ChurchId other) {
    return Journeys.of(roads(minutes, one, other));
  }

  public static List<Journey> roads(int minutes, ChurchId one, ChurchId other) {
    Duration time = Duration.ofMinutes(minutes);
    return List.of(new Journey(one, other, time), new Journey(other, one, time));
  }

  public static Journeys nowhere() {
    return Journeys.of(List.of());
  }

  public static List<Shortage> ofCluster(Span span) {
    return ClashCheck.find(span).stream().filter(s -> s.level() == Level.CLUSTER).toList();
  }
}
