package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import vestiary.calendar.Term;

/** One good line of each list, spoilt in one cell at a time. */
class BadCellsTest {

  private static final Map<ImportWhat, CsvLine> GOOD =
      new EnumMap<>(
          Map.of(
              ImportWhat.CLUSTER,
              Csv.line(
                  "name",
                  "Wenlow Valley",
                  "calendar",
                  "us",
                  "timeZone",
                  "America/Chicago",
                  "languages",
                  "en|es",
                  "anticipatedFrom",
                  "16:00",
                  "turnMinutes",
                  "5"),
              ImportWhat.CHURCHES,
              Csv.line(
                  "slug",
                  "ht",
                  "name",
                  "Holy Trinity",
                  "parish",
                  "Holy Trinity",
                  "place",
                  "Tollbridge",
                  "title",
                  "The Most Holy Trinity",
                  "setOutMinutes",
                  "30",
                  "clearanceMinutes",
                  "15",
                  "latitude",
                  "41.5",
                  "longitude",
                  "-90.25"),
              ImportWhat.PROPERS,
              Csv.line(
                  "id",
                  "our-lady-of-the-ford",
                  "name",
                  "Our Lady of the Ford",
                  "day",
                  "08-19",
                  "colour",
                  "white",
                  "place",
                  "patron-of-the-diocese"),
              ImportWhat.JOURNEYS,
              Csv.line("from", "ht", "to", "sa", "minutes", "14"),
              ImportWhat.PEOPLE,
              Csv.line(
                  "key",
                  "fintan-oakhallow",
                  "name",
                  "Fintan Oakhallow",
                  "shortName",
                  "Oakhallow",
                  "role",
                  "priest"),
              ImportWhat.PATTERNS,
              Csv.line(
                  "church",
                  "ht",
                  "rrule",
                  "FREQ=WEEKLY;BYDAY=SU",
                  "starts",
                  "2024-01-07",
                  "time",
                  "10:30",
                  "minutes",
                  "60"),
              ImportWhat.MASSES,
              Csv.line("church", "sa", "date", "2026-12-08", "time", "18:30", "minutes", "90"),
              ImportWhat.PIECES,
              Csv.line(
                  "code",
                  "HT-W1-C",
                  "kind",
                  "chasuble",
                  "colours",
                  "white",
                  "home",
                  "ht",
                  "set",
                  "HT-W1"),
              ImportWhat.CARE,
              Csv.line("piece", "SA-W3-C", "from", "2026-11-27", "reason", "At the cleaner"),
              ImportWhat.OUT,
              Csv.line(
                  "piece",
                  "OL-D1",
                  "whom",
                  "the cathedral",
                  "from",
                  "2026-11-13",
                  "due",
                  "2026-11-27")));

  static {
    GOOD.put(
        ImportWhat.ABSENCES,
        Csv.line("person", "fintan-oakhallow", "from", "2026-12-07", "to", "2026-12-13"));
  }

  private static final Map<ImportWhat, Function<CsvLine, Reading<?>>> PARSERS =
      new EnumMap<>(
          Map.of(
              ImportWhat.CLUSTER, ClusterLine::parse,
              ImportWhat.CHURCHES, line -> ChurchLine.parse(line, DateWords.ISO),
              ImportWhat.PROPERS, ProperLine::parse,
              ImportWhat.JOURNEYS, JourneyLine::parse,
              ImportWhat.PEOPLE, PersonLine::parse,
              ImportWhat.PATTERNS, PatternLine::parse,
              ImportWhat.MASSES, line -> MassLine.parse(line, DateWords.ISO),
              ImportWhat.PIECES, PieceLine::parse,
              ImportWhat.CARE, line -> CareLine.parse(line, DateWords.ISO),
              ImportWhat.OUT, line -> OutLine.parse(line, DateWords.ISO)));

  static {
    PARSERS.put(ImportWhat.ABSENCES, line -> AbsenceLine.parse(line, DateWords.ISO));
  }

  @ParameterizedTest
  @EnumSource
  void the_unspoilt_line_is_good(ImportWhat what) {
    Reading<?> reading = PARSERS.get(what).apply(GOOD.get(what));

    assertEquals(List.of(), reading.bad());
    assertEquals(1, reading.lines().size());
  }

  @ParameterizedTest
  @EnumSource
  void a_required_cell_left_empty_is_named(ImportWhat what) {
    List<String> required =
        what.columns().stream().filter(Column::required).map(Column::name).toList();

    for (String column : required) {
      List<BadLine> bad = spoilt(what, column, "");
      assertEquals(
          List.of(new BadLine(2, column, "The cell is empty; it must be filled in.")), bad);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          cluster;  timeZone;        Mars/Olympus;         IANA name
          cluster;  timeZone;        +05:00;               IANA name
          cluster;  languages;       en|xx;                Write one of: en, es.
          cluster;  anticipatedFrom; soon;                 from 00:00 to 23:59
          cluster;  turnMinutes;     61;                   from 0 to 60
          cluster;  anticipatedFrom; 16:00|17:00;          from 00:00 to 23:59
          cluster;  permittedSunday; 10;                   from 1 to 9
          cluster;  permittedWeekday; 0;                   from 1 to 9
          cluster;  languages;       |;                    Write one of: en, es.
          cluster;  ladderOrder;     rose;                 stole, white
          churches; slug;            holy trinity;         single hyphens
          churches; slug;            ht-;                  single hyphens
          churches; setOutMinutes;   241;                  from 0 to 240
          churches; clearanceMinutes; -1;                  from 0 to 240
          churches; dedication;      1891-02-29;           year-month-day
          churches; dedication;      23 May 1891;          year-month-day
          churches; latitude;        91;                   from -90 to 90
          churches; longitude;       NaN;                  from -180 to 180
          propers;  id;              Our Lady;             single hyphens
          propers;  celebration;     Saint Anne;           single hyphens
          propers;  day;             02-30;                month and day
          propers;  day;             19 August;            month and day
          propers;  colour;          blue;                 white, red, green
          propers;  place;           bishop;               patron-of-the-place, founder-of-an-order
          propers;  churches;        Saint Anne;           of a church that the cluster has
          propers;  onSunday;        monday;               before, after, nearest
          propers;  keptOn;          2301-01-01;           1970 to 2300
          journeys; minutes;         0;                    from 1 to 1440
          journeys; minutes;         1441;                 from 1 to 1440
          journeys; minutes;         14.5;                 whole number
          journeys; to;              ht;                   another church
          journeys; oneWay;          perhaps;              true, false, yes, no
          people;   role;            cook;                 priest, deacon, bishop
          people;   key;             Ñandú;                single hyphens
          patterns; starts;          2024-13-01;           year-month-day
          patterns; starts;          day+1;                year-month-day
          patterns; time;            25:00;                from 00:00 to 23:59
          patterns; minutes;         4;                    from 5 to 360
          patterns; minutes;         361;                  from 5 to 360
          patterns; deacons;         -1;                   from 0 to 200
          patterns; mass;            nuptial;              wedding
          masses;   date;            08/12/2026;           year-month-day
          masses;   date;            2026-11-31;           year-month-day
          masses;   date;            1969-12-31;           1970 to 2300
          masses;   date;            2301-01-01;           1970 to 2300
          masses;   date;            white;                year-month-day
          masses;   time;            6:30 pm;              from 00:00 to 23:59
          masses;   time;            24:00;                from 00:00 to 23:59
          masses;   minutes;         0;                    from 5 to 360
          masses;   minutes;         400;                  from 5 to 360
          masses;   colour;          blue;                 white, red, green, violet, rose
          masses;   concelebrants;   201;                  from 0 to 200
          masses;   concelebrants;   three;                whole number
          masses;   concelebrants;   99999999999;          from 0 to 200
          masses;   leave;           pope;                 none, celebrant, rector, bishop
          masses;   replaces;        18:00|18:60;          from 00:00 to 23:59
          masses;   brings;          his own;              principal:chasuble+stole
          masses;   brings;          verger:cope;          principal, concelebrant
          masses;   brings;          principal:crown;      chasuble, stole
          masses;   brings;          concelebrant 0:alb;   1 to 200
          masses;   brings;          concelebrant 201:alb; 1 to 200
          masses;   brings;          principal:alb+;       chasuble, stole
          masses;   setOutMinutes;   241;                  from 1 to 240
          masses;   setOutMinutes;   0;                    from 1 to 240
          pieces;   code;            HT W1;                single hyphens
          pieces;   kind;            tunicle;              chasuble, stole
          pieces;   colours;         white|blue;           white, red, green
          pieces;   grade;           best;                 ferial, festive, solemn
          pieces;   ownerPolicy;     sometimes;            freely, asking, never
          pieces;   colours;         |;                    white, red, green
          care;     from;            day-3;                year-month-day
          care;     to;              2026-11-26;           on or after the first, 2026-11-27
          care;     due;             2026-11-26;           on or after the first, 2026-11-27
          care;     set;             HT-W1;                either the column piece or
          out;      due;             2026-11-12;           on or after the first, 2026-11-13
          out;      set;             HT-W1;                either the column piece or
          out;      church;          ht;                   either the column church or
          out;      from;            soon;                 year-month-day
          """)
  void a_bad_cell_is_repeated_with_what_may_stand_there(
      String list, String column, String text, String wanted) {
    ImportWhat what = Term.find(ImportWhat.class, list).orElseThrow();

    List<BadLine> bad = spoilt(what, column, text);

    assertEquals(1, bad.size(), bad.toString());
    assertEquals(2, bad.get(0).line());
    assertTrue(bad.get(0).reason().contains(wanted), bad.toString());
    assertTrue(bad.get(0).reason().contains("\""), bad.toString());
  }

  @Test
  void a_cell_of_more_than_two_thousand_characters_is_refused_and_not_repeated_whole() {
    List<BadLine> bad = spoilt(ImportWhat.MASSES, "note", "x".repeat(2001));

    assertTrue(bad.get(0).reason().endsWith("Write at most 2,000 characters."));
    assertTrue(bad.get(0).reason().length() < 200);
    assertEquals(List.of(), spoilt(ImportWhat.MASSES, "note", "x".repeat(2000)));
  }

  @Test
  void a_character_that_cannot_be_printed_is_refused() {
    assertEquals(1, spoilt(ImportWhat.MASSES, "note", "a\u0000b").size());
    assertEquals(List.of(), spoilt(ImportWhat.MASSES, "note", "a\nb"));
  }

  @Test
  void every_bad_cell_of_a_line_is_named() {
    CsvLine line = Csv.with(GOOD.get(ImportWhat.MASSES), "time", "noon");

    List<BadLine> bad = MassLine.parse(Csv.with(line, "minutes", "0"), DateWords.ISO).bad();

    assertEquals(List.of("time", "minutes"), bad.stream().map(BadLine::column).toList());
  }

  private static List<BadLine> spoilt(ImportWhat what, String column, String text) {
    return PARSERS.get(what).apply(Csv.with(GOOD.get(what), column, text)).bad();
  }
}
