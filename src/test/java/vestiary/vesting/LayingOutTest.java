package vestiary.vesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;

/**
 * The order on the vesting table, and that all is there which the General Instruction names.
 *
 * <p>Source: GIRM 119 and 335 to 342; the order: Adoremus, "Vesting prior to Mass", April 2021.
 */
class LayingOutTest {

  private static final ChurchId HERE = new ChurchId(new UUID(0, 2));

  @Test
  void a_priest_finds_the_amice_on_top_and_the_chasuble_lowest() {
    assertEquals(
        List.of(
            PieceKind.CHASUBLE,
            PieceKind.STOLE,
            PieceKind.CINCTURE,
            PieceKind.ALB,
            PieceKind.AMICE),
        laid(mass(MassKind.OF_THE_DAY, ministers(2, 0)), Role.PRINCIPAL));
    assertEquals(
        laid(mass(MassKind.OF_THE_DAY, ministers(2, 0)), Role.PRINCIPAL),
        laid(mass(MassKind.OF_THE_DAY, ministers(2, 0)), Role.CONCELEBRANT));
  }

  @Test
  void a_deacon_finds_the_dalmatic_lowest_and_his_own_kind_of_stole_above_it() {
    // GIRM 119 b, 338 and 340.
    assertEquals(
        List.of(
            PieceKind.DALMATIC,
            PieceKind.DEACON_STOLE,
            PieceKind.CINCTURE,
            PieceKind.ALB,
            PieceKind.AMICE),
        laid(mass(MassKind.OF_THE_DAY, ministers(0, 1)), Role.DEACON));
  }

  @Test
  void other_ministers_find_an_alb_with_amice_and_cincture() {
    // GIRM 119 c, 336 and 339: albs, or other approved dress.
    Ministers servers =
        new Ministers(
            Presider.PRIEST,
            0,
            0,
            List.of(),
            List.of(new FurtherMinisters(Role.SERVER, 2, List.of())),
            Set.of());
    VestedMass mass = mass(MassKind.OF_THE_DAY, servers);

    assertEquals(
        List.of(PieceKind.CINCTURE, PieceKind.ALB, PieceKind.AMICE), laid(mass, Role.SERVER));
    assertTrue(pile(mass, Role.SERVER).laid().get(1).ladder().contains(Step.OTHER_DRESS));
  }

  @Test
  void for_benediction_the_cope_lies_lowest_and_the_humeral_veil_beside() {
    // GIRM 341 names the cope; Holy Communion and Worship of the Eucharist 92 the veil.
    VestedMass benediction = mass(MassKind.BENEDICTION, ministers(0, 0));

    assertEquals(
        List.of(
            PieceKind.COPE, PieceKind.STOLE, PieceKind.CINCTURE, PieceKind.ALB, PieceKind.AMICE),
        laid(benediction, Role.MINISTER));
    assertEquals(
        List.of(PieceKind.HUMERAL_VEIL),
        pile(benediction, Role.MINISTER).beside().stream().map(Need::kind).toList());
  }

  @Test
  void a_cope_for_the_procession_lies_beside_the_pile_with_the_chasuble() {
    Ministers procession =
        new Ministers(Presider.PRIEST, 0, 0, List.of(), List.of(), Set.of(PieceKind.COPE));
    LayingOut.Pile pile = pile(mass(MassKind.OF_THE_DAY, procession), Role.PRINCIPAL);

    assertEquals(PieceKind.CHASUBLE, pile.laid().get(0).kind());
    assertEquals(List.of(PieceKind.COPE), pile.beside().stream().map(Need::kind).toList());
  }

  @Test
  void all_that_is_made_ready_by_girm_119_lies_there_for_everybody() {
    List<LayingOut.Pile> piles = piles(mass(MassKind.OF_THE_DAY, ministers(3, 2)));

    assertEquals(6, piles.size());
    for (LayingOut.Pile pile : piles) {
      Set<PieceKind> kinds = pile.laid().stream().map(Need::kind).collect(Collectors.toSet());
      assertTrue(
          kinds.containsAll(
              pile.wearer().role() == Role.DEACON
                  ? Set.of(PieceKind.ALB, PieceKind.DEACON_STOLE, PieceKind.DALMATIC)
                  : Set.of(PieceKind.ALB, PieceKind.STOLE, PieceKind.CHASUBLE)),
          () -> pile.wearer() + ": " + kinds);
    }
  }

  @Test
  void who_brings_his_own_has_his_place_on_the_table_all_the_same() {
    Ministers bringing =
        new Ministers(false, 2, 0, List.of(new Brings(Role.CONCELEBRANT, 2, Set.of())));

    assertEquals(3, piles(mass(MassKind.OF_THE_DAY, bringing)).size());
  }

  private static List<PieceKind> laid(VestedMass mass, Role role) {
    return pile(mass, role).laid().stream().map(Need::kind).toList();
  }

  private static LayingOut.Pile pile(VestedMass mass, Role role) {
    return piles(mass).stream()
        .filter(pile -> pile.wearer().role() == role)
        .findFirst()
        .orElseThrow();
  }

  private static List<LayingOut.Pile> piles(VestedMass mass) {
    return LayingOut.piles(mass, VestingPolicies.DEFAULTS, KeptKinds.NONE);
  }

  private static Ministers ministers(int concelebrants, int deacons) {
    return new Ministers(false, concelebrants, deacons, List.of());
  }

  private static VestedMass mass(MassKind kind, Ministers ministers) {
    return new VestedMass(
        new MassId(new UUID(0, 1)),
        HERE,
        kind,
        new MassTime(
            Instant.parse("2026-12-13T16:00:00Z"),
            Duration.ofMinutes(60),
            true,
            new Sacristy(Duration.ofMinutes(30), Duration.ofMinutes(15)),
            Duration.ZERO),
        new MassColour(Colour.WHITE, false, false),
        ministers);
  }
}
