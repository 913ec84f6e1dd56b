package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.calendar.Leave;
import vestiary.calendar.MassKind;
import vestiary.calendar.Verdict;

/**
 * The whole table of Masses that may be said beside the Mass of the day, each of its rows on days
 * of that kind. Sources: GIRM 372 (ritual Masses), 374 (needs, by the bishop's order), 376 (votive,
 * by the rector's judgement), 375 and 377 (votive, at free choice), 380 (funeral), 381 (for the
 * dead: on news of a death or a first anniversary; otherwise).
 */
class TableOfMassesTest {

  /** Y may be said, L may be said with the leave recorded, - may not. */
  @ParameterizedTest(name = "{0} {1} ({2}): {3}")
  @CsvSource({
    "general, 2026-04-03, Good Friday,                        -------",
    "general, 2026-04-04, Holy Saturday,                      -------",
    "general, 2026-04-02, Holy Thursday,                      -------",
    "general, 2026-04-05, Easter Sunday,                      -------",
    "general, 2026-12-06, a Sunday of Advent,                 -------",
    "general, 2026-03-08, a Sunday of Lent,                   -------",
    "general, 2026-03-29, Palm Sunday,                        -------",
    "general, 2026-04-19, a Sunday of Easter,                 -------",
    "us,      2025-12-08, a solemnity of obligation,          -------",
    "general, 2026-12-25, Christmas,                          -------",
    "general, 2026-05-31, a solemnity on a Sunday,            -------",
    "general, 2026-06-24, a solemnity without obligation,     ----Y--",
    "us,      2026-08-15, a solemnity whose precept lapses,   ----Y--",
    "us,      2030-12-09, a solemnity moved to another day,   ----Y--",
    "general, 2026-11-02, All Souls,                          ----Y--",
    "general, 2025-11-02, All Souls on a Sunday,              ----Y--",
    "general, 2026-02-18, Ash Wednesday,                      ----Y--",
    "general, 2026-03-30, Monday of Holy Week,                ----Y--",
    "general, 2026-04-01, Wednesday of Holy Week,             ----Y--",
    "general, 2026-04-06, Monday of the Easter octave,        ----Y--",
    "general, 2026-04-11, Saturday of the Easter octave,      ----Y--",
    "general, 2026-06-21, a Sunday in Ordinary Time,          YL--Y--",
    "general, 2026-01-04, a Sunday of Christmas Time,         YL--Y--",
    "general, 2025-02-02, a feast of the Lord on a Sunday,    YL--Y--",
    "general, 2026-09-14, a feast of the Lord on a weekday,   YL--Y--",
    "general, 2026-09-08, a feast of Mary,                    YL--Y--",
    "general, 2026-08-10, a feast of a saint,                 YL--Y--",
    "england, 2026-07-11, a feast of the country,             YL--Y--",
    "general, 2026-12-17, a weekday from 17 December,         YL--YY-",
    "general, 2026-12-29, a day of the Christmas octave,      YL--YY-",
    "general, 2026-02-19, the day after Ash Wednesday,        YL--YY-",
    "general, 2026-02-26, a weekday of Lent,                  YL--YY-",
    "general, 2026-02-23, a memorial in Lent,                 YL--YY-",
    "general, 2026-06-05, an obligatory memorial,             YLL-YY-",
    "general, 2026-12-16, a weekday of Advent,                YLL-YY-",
    "general, 2026-01-08, a weekday of Christmas Time,        YLL-YY-",
    "general, 2026-04-22, a weekday of Easter Time,           YLL-YY-",
    "general, 2026-06-16, a weekday in Ordinary Time,         YLLYYYY",
    "general, 2026-08-25, a weekday with optional memorials,  YLLYYYY"
  })
  void each_kind_of_day_has_its_row(String calendar, LocalDate date, String kind, String row) {
    LocalDateTime start = date.atTime(10, 0);

    String answer =
        cell(calendar, start, MassKind.WEDDING, "", Leave.NONE)
            + cell(calendar, start, MassKind.VARIOUS_NEEDS, "", Leave.BISHOP)
            + cell(calendar, start, MassKind.VOTIVE, "sacred-heart", Leave.RECTOR)
            + cell(calendar, start, MassKind.VOTIVE, "sacred-heart", Leave.NONE)
            + cell(calendar, start, MassKind.FUNERAL, "", Leave.NONE)
            + cell(calendar, start, MassKind.DEAD_ANNIVERSARY, "", Leave.NONE)
            + cell(calendar, start, MassKind.DEAD, "", Leave.NONE);

    assertEquals(row, answer, kind);
  }

  private static String cell(
      String calendar, LocalDateTime start, MassKind kind, String votiveOf, Leave leave) {
    Verdict verdict =
        Churches.of(calendar)
            .liturgicalCalendar()
            .ruling(start, kind, votiveOf, leave)
            .permission()
            .verdict();
    return switch (verdict) {
      case PERMITTED -> "Y";
      case WITH_LEAVE -> "L";
      case NOT_PERMITTED -> "-";
    };
  }
}
