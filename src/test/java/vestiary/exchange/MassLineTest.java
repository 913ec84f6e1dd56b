package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MassLineTest {

  private static final String MASSES = "church,date,time,minutes,";

  @Test
  void a_mass_left_half_said_leaves_the_rest_to_the_calendar() {
    MassLine mass = only(masses(MASSES + "note", "sa,2026-12-08,8:05,90,=jubilee"));

    assertEquals(LocalDate.of(2026, 12, 8), mass.date());
    assertEquals(LocalTime.of(8, 5), mass.time());
    assertEquals("", mass.mass());
    assertEquals("", mass.colour());
    assertEquals(0, mass.concelebrants());
    assertEquals(0, mass.deacons());
    assertEquals(Cells.NOT_SAID, mass.setOutMinutes());
    assertEquals(List.of(), mass.replaces());
    assertEquals("=jubilee", mass.note());
  }

  @Test
  void names_of_concelebrants_are_told_to_be_unused_and_do_not_count() {
    Reading<MassLine> reading =
        masses(MASSES + "concelebrants,concelebrating", "sa,2026-12-08,18:30,90,3,a|b");

    assertEquals(List.of("concelebrating"), reading.unknownColumns());
    assertEquals(3, only(reading).concelebrants());
  }

  @Test
  void what_is_brought_names_the_role_the_number_and_the_pieces() {
    MassLine mass =
        only(
            masses(
                MASSES + "brings",
                "sa,2026-12-08,18:30,90,Principal: chasuble + stole|concelebrant 2:alb"));

    assertEquals(
        List.of(
            new Bringing("principal", 1, List.of("chasuble", "stole")),
            new Bringing("concelebrant", 2, List.of("alb"))),
        mass.brings());
  }

  @Test
  void who_else_vests_is_told_by_kind_number_and_sizes_of_albs() {
    MassLine mass =
        only(
            masses(
                MASSES + "bishop,ministers,also",
                "sa,2026-12-08,18:30,90,yes,Server 3: 120 + 130|reader|new-priest 2:S+M,cope|humeral-veil"));

    assertEquals(
        List.of(
            new MinistersEntry("server", 3, List.of("120", "130")),
            new MinistersEntry("reader", 1, List.of()),
            new MinistersEntry("new-priest", 2, List.of("S", "M"))),
        mass.ministers());
    assertTrue(mass.bishop());
    assertEquals(List.of("cope", "humeral-veil"), mass.also());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "principal 1",
        "server 0",
        "server 201",
        "server 1:120+130",
        "four servers",
        ":120"
      })
  void ministers_that_are_not_understood_are_told_how_to_be_written(String cell) {
    Reading<MassLine> reading = masses(MASSES + "ministers", "sa,2026-12-08,18:30,90," + cell);

    assertEquals(List.of("ministers"), reading.bad().stream().map(BadLine::column).toList());
    assertTrue(reading.bad().get(0).reason().contains("for example server 4"));
  }

  @Test
  void who_serves_is_told_by_key_and_where_need_be_by_role() {
    assertEquals(
        List.of(
            new ServingEntry("tamsin-q", ""),
            new ServingEntry("odo-larkspire", "communion-minister")),
        only(masses(
                MASSES + "serving",
                "sa,2026-12-08,18:30,90,Tamsin-Q|odo-larkspire : Communion-Minister"))
            .serving());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Tamsin Quillfeather", "odo-larkspire:organist", ":reader", "a:b:c"})
  void who_serves_is_told_how_to_be_written_where_it_is_not_understood(String cell) {
    Reading<MassLine> reading = masses(MASSES + "serving", "sa,2026-12-08,18:30,90," + cell);

    assertEquals(List.of("serving"), reading.bad().stream().map(BadLine::column).toList());
    assertTrue(reading.bad().get(0).reason().contains("for example odo-larkspire:reader"));
  }

  @Test
  void two_masses_cannot_begin_in_one_church_at_one_time() {
    Reading<MassLine> reading =
        masses(
            MASSES + "note",
            "sa,2026-12-08,18:30,90,",
            "ht,2026-12-08,18:30,90,",
            "SA,2026-12-08,18:30,30,");

    assertEquals(1, reading.bad().size());
    assertEquals(
        "\"2026-12-08 18:30 in sa\" is on line 2 already; keep one of the two lines.",
        reading.bad().get(0).reason());
  }

  @Test
  void a_mass_whose_word_names_no_day_is_left_out() {
    Reading<MassLine> reading =
        MassLine.read(
            CsvTable.parse(
                Csv.file(MASSES + "note", "sa,never,18:30,90,", "sa,today,18:30,90,"),
                ImportWhat.MASSES),
            (cell, church) -> Optional.of(LocalDate.EPOCH).filter(day -> cell.equals("today")));

    assertTrue(reading.isGood());
    assertEquals(List.of(3), reading.lines().stream().map(MassLine::line).toList());
  }

  private static Reading<MassLine> masses(String... lines) {
    return MassLine.read(CsvTable.parse(Csv.file(lines), ImportWhat.MASSES), DateWords.ISO);
  }

  private static MassLine only(Reading<MassLine> reading) {
    assertEquals(List.of(), reading.bad());
    assertEquals(1, reading.lines().size());
    return reading.lines().get(0);
  }
}
