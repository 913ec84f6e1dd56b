package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.norms.Vested.liturgy;
import static vestiary.norms.Vested.mass;
import static vestiary.norms.Vested.ministers;
import static vestiary.norms.Vested.needs;
import static vestiary.norms.Vested.of;
import static vestiary.norms.Vested.words;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.vesting.Brings;
import vestiary.vesting.LadderOrder;
import vestiary.vesting.Ministers;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.VestingNorms;
import vestiary.vesting.VestingPolicies;

/**
 * What each minister wears and what may stand in for it. Sources beside each check: General
 * Instruction of the Roman Missal (GIRM); Redemptionis Sacramentum (RS, 2004); Roman Missal.
 */
class WhoWearsWhatTest {

  private static final VestingPolicies WHITE_FIRST = policies(LadderOrder.WHITE, false);
  private static final VestingPolicies WHITE_FOR_ALL = policies(LadderOrder.STOLE, true);

  /** GIRM 119 and 337, RS 123: stole and chasuble over the alb. */
  @Test
  void a_priest_alone_wears_chasuble_and_stole_of_the_day() {
    List<Need> needs = needs(mass(Colour.GREEN, ministers(0, 0)));

    assertEquals(List.of("principal chasuble green", "principal stole green"), words(needs));
    assertTrue(needs.stream().allMatch(need -> need.isMust() && need.ladder().isEmpty()));
    assertEquals("GIRM 337; RS 123", needs.get(0).source());
  }

  /** GIRM 209, RS 124: a just cause lets concelebrants wear stole over alb, necessity white. */
  @Test
  void a_concelebrant_may_go_without_a_chasuble_but_not_without_a_stole() {
    List<Need> needs = of(Role.CONCELEBRANT, needs(mass(Colour.RED, ministers(1, 0))));

    assertEquals(List.of("concelebrant chasuble red", "concelebrant stole red"), words(needs));
    assertEquals(List.of(Step.STOLE_OVER_ALB, Step.WHITE_CHASUBLE), needs.get(0).ladder());
    assertEquals(List.of(false, true), needs.stream().map(Need::isMust).toList());
  }

  @Test
  void a_cluster_may_take_the_white_chasuble_first() {
    List<Need> needs = VestingNorms.needsOf(mass(Colour.RED, ministers(1, 0)), WHITE_FIRST);

    assertEquals(
        List.of(Step.WHITE_CHASUBLE, Step.STOLE_OVER_ALB),
        of(Role.CONCELEBRANT, needs).get(0).ladder());
  }

  @Test
  void white_is_no_substitute_for_white() {
    List<Need> needs = of(Role.CONCELEBRANT, needs(mass(Colour.WHITE, ministers(1, 0))));

    assertEquals(List.of(Step.STOLE_OVER_ALB), needs.get(0).ladder());
  }

  /** GIRM 338 and 119: dalmatic and stole; the dalmatic may be left out. */
  @Test
  void a_deacon_wears_dalmatic_and_stole_and_may_leave_out_the_dalmatic() {
    List<Need> needs = of(Role.DEACON, needs(mass(Colour.GREEN, ministers(0, 1))));

    assertEquals(List.of("deacon deacon-stole green", "deacon dalmatic green"), words(needs));
    assertEquals(List.of(Step.DALMATIC_LEFT_OUT), needs.get(1).ladder());
    assertEquals(List.of(true, false), needs.stream().map(Need::isMust).toList());
  }

  /** GIRM 346 f: rose may be worn on the two Sundays; violet remains right. */
  @Test
  void rose_may_yield_to_violet_for_everybody() {
    List<Need> needs = needs(mass(Colour.ROSE, ministers(1, 1)));

    assertTrue(needs.stream().allMatch(need -> need.ladder().get(0) == Step.VIOLET_FOR_ROSE));
    assertTrue(needs.get(0).isLawfullyServedBy(List.of(Colour.VIOLET)));
    assertTrue(!needs.get(0).isServedBy(List.of(Colour.VIOLET)));
  }

  /** RS 124: the principal celebrant always wears the prescribed colour. */
  @Test
  void white_lawfully_serves_a_concelebrant_in_red_but_never_the_principal() {
    List<Need> needs = needs(mass(Colour.RED, ministers(1, 0)));

    assertTrue(of(Role.CONCELEBRANT, needs).get(0).isLawfullyServedBy(List.of(Colour.WHITE)));
    assertTrue(
        of(Role.PRINCIPAL, needs).stream()
            .noneMatch(need -> need.isLawfullyServedBy(List.of(Colour.WHITE))));
  }

  /** Common practice, no source; the principal celebrant by RS 124. */
  @Test
  void white_for_all_at_a_large_mass_leaves_the_principal_in_the_colour_of_the_day() {
    List<Need> needs = VestingNorms.needsOf(mass(Colour.RED, ministers(6, 0)), WHITE_FOR_ALL);

    assertTrue(of(Role.PRINCIPAL, needs).stream().allMatch(n -> n.colour() == Colour.RED));
    assertTrue(of(Role.CONCELEBRANT, needs).stream().allMatch(n -> n.colour() == Colour.WHITE));
  }

  @Test
  void white_for_all_does_not_touch_a_mass_of_five_concelebrants() {
    List<Need> needs = VestingNorms.needsOf(mass(Colour.RED, ministers(5, 0)), WHITE_FOR_ALL);

    assertTrue(needs.stream().allMatch(need -> need.colour() == Colour.RED));
  }

  @Test
  void who_brings_everything_asks_for_nothing_and_who_brings_a_stole_asks_for_the_chasuble() {
    Ministers ministers =
        new Ministers(
            false,
            3,
            0,
            List.of(
                new Brings(Role.PRINCIPAL, 1, Set.of()),
                new Brings(Role.CONCELEBRANT, 2, Set.of(PieceKind.STOLE))));

    List<Need> needs = needs(mass(Colour.WHITE, ministers));

    assertEquals(3, needs.stream().filter(n -> n.kind() == PieceKind.CHASUBLE).count());
    assertEquals(1, needs.stream().filter(n -> n.kind() == PieceKind.STOLE).count());
    assertEquals(List.of(), of(Role.PRINCIPAL, needs));
  }

  /** Roman Missal, Good Friday 5: red vestments as for Mass. */
  @Test
  void on_good_friday_priest_and_deacon_vest_as_for_mass_and_the_sacrament_is_brought_in_a_veil() {
    List<Need> needs = needs(liturgy(MassKind.GOOD_FRIDAY, Colour.RED, ministers(0, 1)));

    assertEquals(
        Set.of(
            PieceKind.CHASUBLE,
            PieceKind.STOLE,
            PieceKind.DALMATIC,
            PieceKind.DEACON_STOLE,
            PieceKind.HUMERAL_VEIL),
        Set.copyOf(needs.stream().map(Need::kind).toList()));
  }

  /** Holy Communion and Worship of the Eucharist outside Mass 92: white cope and humeral veil. */
  @Test
  void benediction_takes_cope_veil_and_stole_all_of_them_musts() {
    List<Need> needs = needs(liturgy(MassKind.BENEDICTION, Colour.RED, ministers(0, 0)));

    assertEquals(
        List.of("minister stole red", "minister cope white", "minister humeral-veil white"),
        words(needs));
    assertTrue(needs.stream().allMatch(Need::isMust));
  }

  /** GIRM 341: the cope is for processions. */
  @Test
  void a_procession_takes_cope_and_stole() {
    List<Need> needs = needs(liturgy(MassKind.PROCESSION, Colour.RED, ministers(0, 0)));

    assertEquals(List.of("minister stole red", "minister cope red"), words(needs));
  }

  /** The rituals: alb or surplice, and stole. */
  @ParameterizedTest
  @EnumSource(
      value = MassKind.class,
      names = {"BAPTISM_OUTSIDE_MASS", "FUNERAL_OUTSIDE_MASS"})
  void other_rites_take_a_stole(MassKind kind) {
    assertEquals(
        List.of("minister stole white"),
        words(needs(liturgy(kind, Colour.WHITE, ministers(0, 0)))));
  }

  @ParameterizedTest
  @EnumSource(MassKind.class)
  void somebody_vests_at_every_liturgy_and_every_need_names_its_norm(MassKind kind) {
    List<Need> needs = needs(liturgy(kind, Colour.WHITE, ministers(2, 1)));

    assertTrue(needs.stream().anyMatch(need -> need.ordinal() == 1 && need.isMust()));
    assertTrue(needs.stream().noneMatch(need -> need.source().isBlank()));
  }

  /** GIRM 346 f, 209, 338 and RS 124, as each step names them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "VIOLET_FOR_ROSE | GIRM 346 f",
        "STOLE_OVER_ALB | GIRM 209; RS 124",
        "WHITE_CHASUBLE | RS 124",
        "DALMATIC_LEFT_OUT | GIRM 338",
        "OTHER_DRESS | GIRM 339",
        "ALB_ALONE | GIRM 119 and 336",
        "WHITE_DALMATIC | Ceremonial of Bishops 56",
        "PALL_LEFT_OUT | Order of Christian Funerals 38"
      })
  void each_substitute_names_its_norm(Step step, String source) {
    assertEquals(source, step.source());
    assertTrue(!step.sentence().isBlank());
  }

  private static VestingPolicies policies(LadderOrder order, boolean whiteForAll) {
    VestingPolicies usual = VestingPolicies.DEFAULTS;
    return new VestingPolicies(
        usual.weekdaySetOut(),
        usual.largeSetOut(),
        usual.largeClearance(),
        usual.turn(),
        order,
        whiteForAll);
  }
}
