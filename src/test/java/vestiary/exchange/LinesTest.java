package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What good lines become, and lines that cannot stand beside each other. */
class LinesTest {

  @Test
  void a_cluster_names_only_the_settings_that_are_filled_in() {
    ClusterLine cluster =
        only(
            ClusterLine.read(
                CsvTable.parse(
                    Csv.file(
                        "name,calendar,timeZone,languages,anticipatedFrom,whiteForAll,countBy,turnMinutes,countAlbs,pontificals",
                        "Wenlow Valley,us,America/Chicago,es|en,16:30,No,,5,no,yes"),
                    ImportWhat.CLUSTER)));

    assertEquals(List.of("es", "en"), cluster.languages());
    assertEquals(
        Map.of(
            "anticipatedFrom", "16:30",
            "whiteForAll", "false",
            "turnMinutes", "5",
            "countAlbs", "false",
            "pontificals", "true"),
        cluster.settings());
  }

  @Test
  void a_second_cluster_line_is_refused() {
    Reading<ClusterLine> reading =
        ClusterLine.read(
            CsvTable.parse(
                Csv.file(
                    "name,calendar,timeZone,languages",
                    "Wenlow Valley,us,America/Chicago,en",
                    "Other Valley,us,America/Chicago,en"),
                ImportWhat.CLUSTER));

    assertEquals(
        List.of(
            new BadLine(
                3, "name", "\"the cluster\" is on line 2 already; keep one of the two lines.")),
        reading.bad());
  }

  @Test
  void a_church_without_coordinates_and_dedication_says_so() {
    ChurchLine church =
        only(
            ChurchLine.read(
                CsvTable.parse(
                    Csv.file(
                        "slug,name,parish,place,title,titularDay,titularColour,setOutMinutes,clearanceMinutes",
                        "HT,Holy Trinity,Holy Trinity,Tollbridge,Saint Odo,09-19,White,30,15"),
                    ImportWhat.CHURCHES),
                DateWords.ISO));

    assertEquals("ht", church.slug());
    assertEquals("09-19", church.titularDay());
    assertEquals("white", church.titularColour());
    assertEquals(LocalDate.MIN, church.dedication());
    assertTrue(Double.isNaN(church.latitude()));
  }

  @Test
  void the_title_of_a_church_is_told_in_one_way() {
    String header = "slug,name,parish,place,title,titular,titularDay,titularColour,setOutMinutes,";
    byte[] file =
        Csv.file(
            header + "clearanceMinutes",
            "ht,T,T,T,T,trinity-sunday,09-19,white,30,15",
            "sa,A,A,A,A,,09-19,,30,15",
            "sj,J,J,J,J,,,white,30,15",
            "ol,R,R,R,R,,02-30,white,30,15");

    List<BadLine> bad =
        ChurchLine.read(CsvTable.parse(file, ImportWhat.CHURCHES), DateWords.ISO).bad();

    assertEquals(
        List.of("titularDay", "titularColour", "titularColour", "titularDay"),
        bad.stream().map(BadLine::column).toList());
    assertEquals(List.of(2, 3, 4, 5), bad.stream().map(BadLine::line).toList());
  }

  @Test
  void half_a_pair_of_coordinates_is_refused() {
    List<BadLine> bad =
        ChurchLine.read(
                CsvTable.parse(
                    Csv.file(
                        "slug,name,parish,place,title,setOutMinutes,clearanceMinutes,latitude,longitude",
                        "ht,T,T,T,T,30,15,41.5,"),
                    ImportWhat.CHURCHES),
                DateWords.ISO)
            .bad();

    assertEquals(
        List.of(new BadLine(2, "longitude", "Fill in latitude and longitude, or neither.")), bad);
  }

  @Test
  void the_way_back_may_not_be_told_twice() {
    Reading<JourneyLine> reading =
        JourneyLine.read(
            CsvTable.parse(
                Csv.file("from,to,minutes", "ht,sa,14", "sa,ht,15"), ImportWhat.JOURNEYS));

    assertEquals(1, reading.bad().size());
    assertEquals(3, reading.bad().get(0).line());
  }

  @Test
  void two_one_way_journeys_may_differ() {
    Reading<JourneyLine> reading =
        JourneyLine.read(
            CsvTable.parse(
                Csv.file("from,to,minutes,oneWay", "ht,sa,14,yes", "sa,ht,15,TRUE"),
                ImportWhat.JOURNEYS));

    assertTrue(reading.isGood());
    assertTrue(reading.lines().get(1).oneWay());
  }

  @Test
  void a_gold_set_is_gold_first_and_white_too() {
    PieceLine piece =
        only(
            PieceLine.read(
                CsvTable.parse(
                    Csv.file(
                        "code,kind,colours,home,staysHome,size,set,suit",
                        "ht-w4-c,Chasuble,gold | white,ht,true,128,ht-w4,Trinity whites"),
                    ImportWhat.PIECES)));

    assertEquals("HT-W4-C", piece.code());
    assertEquals("HT-W4", piece.set());
    assertEquals(List.of("gold", "white"), piece.colours());
    assertEquals("freely", piece.ownerPolicy());
    assertTrue(piece.staysHome());
  }

  @Test
  void a_chasuble_without_colour_and_a_suit_without_set_are_refused() {
    Reading<PieceLine> reading =
        PieceLine.read(
            CsvTable.parse(
                Csv.file(
                    "code,kind,colours,home,suit,size",
                    "A-1,chasuble,,ht,,",
                    "A-2,alb,,ht,,L",
                    "A-3,alb,,ht,Trinity whites,150"),
                ImportWhat.PIECES));

    assertEquals(List.of("colours", "suit"), reading.bad().stream().map(BadLine::column).toList());
    assertEquals(List.of(2, 4), reading.bad().stream().map(BadLine::line).toList());
  }

  @Test
  void codes_slugs_and_keys_are_there_once() {
    assertTwice(
        PieceLine.read(
            CsvTable.parse(
                Csv.file("code,kind,home", "A-1,alb,ht", "a-1,alb,sa"), ImportWhat.PIECES)),
        "code",
        "A-1");
    assertTwice(
        PersonLine.read(
            CsvTable.parse(
                Csv.file("key,name,shortName,role", "g,Tobias,G,deacon", "g,Lucan,P,deacon"),
                ImportWhat.PEOPLE)),
        "key",
        "g");
    assertTwice(
        ChurchLine.read(
            CsvTable.parse(
                Csv.file(
                    "slug,name,parish,place,title,setOutMinutes,clearanceMinutes",
                    "ht,T,T,T,T,30,15",
                    "ht,T,T,T,T,30,15"),
                ImportWhat.CHURCHES),
            DateWords.ISO),
        "slug",
        "ht");
  }

  @Test
  void care_without_an_end_lasts_until_further_notice() {
    CareLine care =
        only(
            CareLine.read(
                CsvTable.parse(
                    Csv.file(
                        "piece,set,from,to,due,reason",
                        "OL-D1,,2026-11-13,,2026-11-27,Lent to the cathedral"),
                    ImportWhat.CARE),
                DateWords.ISO));

    assertEquals(LocalDate.MAX, care.to());
    assertEquals(LocalDate.of(2026, 11, 27), care.due());
  }

  @Test
  void care_is_for_a_piece_or_a_set_and_not_for_both_or_neither() {
    Reading<CareLine> reading =
        CareLine.read(
            CsvTable.parse(
                Csv.file(
                    "piece,set,from,reason", "OL-D1,OL-D1,2026-11-13,Lent", ",,2026-11-13,Lent"),
                ImportWhat.CARE),
            DateWords.ISO);

    assertEquals(List.of(2, 3), reading.bad().stream().map(BadLine::line).toList());
  }

  private static <T> T only(Reading<T> reading) {
    assertEquals(List.of(), reading.bad());
    assertEquals(1, reading.lines().size());
    return reading.lines().get(0);
  }

  private static void assertTwice(Reading<?> reading, String column, String name) {
    String reason = "\"" + name + "\" is on line 2 already; keep one of the two lines.";
    assertEquals(List.of(new BadLine(3, column, reason)), reading.bad());
  }
}
