package vestiary.vesting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.calendar.Rank;
import vestiary.calendar.Season;

/** Albs by size, where they are counted at all, and what suits a need best. */
class AlbsTest {

  private static final ChurchId HERE = new ChurchId(new UUID(0, 2));
  private static final ChurchId ELSEWHERE = new ChurchId(new UUID(0, 3));
  private static final Occasion WEEKDAY = Occasion.WEEKDAY;

  @Test
  void albs_are_asked_for_in_a_church_that_keeps_them_by_list_and_in_no_other() {
    assertEquals(3, count(PieceKind.ALB, needs(servers(2), albAt(HERE))));
    assertEquals(0, count(PieceKind.ALB, needs(servers(2), albAt(ELSEWHERE))));
    assertEquals(0, count(PieceKind.ALB, needs(servers(2), KeptKinds.NONE)));
  }

  @Test
  void a_church_that_counts_albs_but_no_amices_is_asked_for_no_amice() {
    List<Need> needs = needs(servers(2), albAt(HERE));

    assertEquals(0, count(PieceKind.AMICE, needs));
    assertEquals(0, count(PieceKind.CINCTURE, needs));
  }

  @Test
  void a_cluster_may_leave_albs_uncounted_although_they_are_listed() {
    VestingPolicies usual = VestingPolicies.DEFAULTS;
    VestingPolicies uncounted =
        new VestingPolicies(
            usual.weekdaySetOut(),
            usual.largeSetOut(),
            usual.largeClearance(),
            usual.turn(),
            usual.ladderOrder(),
            usual.whiteForAll(),
            false,
            usual.pontificals());

    List<Need> needs =
        VestingNorms.needsOf(mass(servers(2), WEEKDAY, Colour.GREEN), uncounted, albAt(HERE));

    assertEquals(0, count(PieceKind.ALB, needs));
  }

  @Test
  void who_brings_his_own_alb_asks_for_none() {
    Ministers ministers =
        new Ministers(
            Presider.PRIEST,
            2,
            0,
            List.of(new Brings(Role.CONCELEBRANT, 2, Set.of(PieceKind.ALB))),
            List.of(),
            Set.of());

    assertEquals(1, count(PieceKind.ALB, needs(ministers, albAt(HERE))));
  }

  @Test
  void each_server_prefers_an_alb_of_his_size_and_the_last_take_what_there_is() {
    Ministers ministers =
        ministers(
            new FurtherMinisters(Role.SERVER, 3, List.of("120", "135")),
            new FurtherMinisters(Role.READER, 1, List.of("150")));

    List<Need> needs = needs(ministers, albAt(HERE));

    assertEquals(List.of("120", "135", ""), sizes(Role.SERVER, needs));
    assertEquals(List.of("150"), sizes(Role.READER, needs));
    assertEquals(List.of(""), sizes(Role.PRINCIPAL, needs));
  }

  @Test
  void a_size_is_wanted_of_an_alb_alone() {
    Ministers ministers = ministers(new FurtherMinisters(Role.NEW_PRIEST, 1, List.of("145")));
    VestedMass ordination =
        new VestedMass(
            new MassId(new UUID(0, 1)),
            HERE,
            MassKind.ORDINATION,
            time(),
            new MassColour(Colour.WHITE, false, false),
            ministers);

    List<Need> needs =
        VestingNorms.needsOf(ordination, VestingPolicies.DEFAULTS, albAt(HERE)).stream()
            .filter(need -> need.role() == Role.NEW_PRIEST)
            .toList();

    assertEquals(4, needs.size());
    needs.forEach(
        need ->
            assertEquals(
                need.kind() == PieceKind.ALB ? "145" : "", need.preferred().size(), need + ""));
  }

  /** Common practice, no source: a bluish violet in Advent, a reddish one in Lent. */
  @Test
  void violet_of_advent_and_of_lent_differ_in_shade_and_no_other_colour_does() {
    assertEquals("advent", chasuble(Season.ADVENT, Rank.FERIA, Colour.VIOLET).shade());
    assertEquals("lent", chasuble(Season.LENT, Rank.FERIA, Colour.VIOLET).shade());
    assertEquals("", chasuble(Season.ORDINARY, Rank.SOLEMNITY, Colour.VIOLET).shade());
    assertEquals("", chasuble(Season.ADVENT, Rank.FEAST, Colour.RED).shade());
  }

  /** GIRM 346 g; where the line is drawn is common practice, no source. */
  @Test
  void the_greater_the_day_the_more_precious_the_vestments() {
    assertEquals("ferial", chasuble(Season.ORDINARY, Rank.MEMORIAL, Colour.WHITE).grade());
    assertEquals("festive", chasuble(Season.ORDINARY, Rank.SUNDAY, Colour.GREEN).grade());
    assertEquals("festive", chasuble(Season.ORDINARY, Rank.FEAST, Colour.RED).grade());
    assertEquals("solemn", chasuble(Season.EASTER, Rank.SOLEMNITY, Colour.WHITE).grade());
  }

  @Test
  void a_bishops_mass_is_solemn_on_any_day() {
    VestedMass mass = mass(new Ministers(true, 0, 0, List.of()), WEEKDAY, Colour.GREEN);

    assertEquals(
        List.of("solemn", "solemn"),
        VestingNorms.needsOf(mass, VestingPolicies.DEFAULTS).stream()
            .map(need -> need.preferred().grade())
            .toList());
  }

  private static Make chasuble(Season season, Rank rank, Colour colour) {
    VestedMass mass = mass(ministers(), new Occasion(season, rank), colour);
    return VestingNorms.needsOf(mass, VestingPolicies.DEFAULTS).stream()
        .filter(need -> need.kind() == PieceKind.CHASUBLE)
        .findFirst()
        .orElseThrow()
        .preferred();
  }

  private static List<String> sizes(Role role, List<Need> needs) {
    return needs.stream()
        .filter(need -> need.role() == role && need.kind() == PieceKind.ALB)
        .map(need -> need.preferred().size())
        .toList();
  }

  private static long count(PieceKind kind, List<Need> needs) {
    return needs.stream().filter(need -> need.kind() == kind).count();
  }

  private static Ministers servers(int number) {
    return ministers(new FurtherMinisters(Role.SERVER, number, List.of()));
  }

  private static Ministers ministers(FurtherMinisters... further) {
    return new Ministers(Presider.PRIEST, 0, 0, List.of(), List.of(further), Set.of());
  }

  private static KeptKinds albAt(ChurchId church) {
    return KeptKinds.of(
        List.of(
            new Piece(
                "ALB-1", PieceKind.ALB, List.of(Colour.WHITE), church, false, "", List.of())));
  }

  private static List<Need> needs(Ministers ministers, KeptKinds kept) {
    return VestingNorms.needsOf(
        mass(ministers, WEEKDAY, Colour.GREEN), VestingPolicies.DEFAULTS, kept);
  }

  private static VestedMass mass(Ministers ministers, Occasion occasion, Colour colour) {
    return new VestedMass(
        new MassId(new UUID(0, 1)),
        HERE,
        MassKind.OF_THE_DAY,
        time(),
        new MassColour(colour, false, false),
        ministers,
        occasion);
  }

  private static MassTime time() {
    return new MassTime(
        Instant.parse("2026-12-13T16:00:00Z"),
        Duration.ofMinutes(60),
        true,
        new Sacristy(Duration.ofMinutes(30), Duration.ofMinutes(15)),
        Duration.ZERO);
  }
}
