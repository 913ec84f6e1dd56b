package vestiary.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.feed.CalendarEvents.value;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Sending;

/**
 * A priest's own calendar over a Mass at which he is away: the event stays the same one, says so,
 * leaves him free and counts on (RFC 5545, 3.8.4.7, 3.8.7.4 and 3.8.2.7).
 */
@QuarkusTest
class AwayInCalendarTest {

  private static final String DAY = "2026-12-10";

  @Inject CalendarOfAPriest his;

  private String first;
  private String second;

  @BeforeEach
  void father_ilverton_drives_from_one_mass_to_the_next() {
    his.begin();
    CalendarOfAPriest.TwoMasses two = CalendarOfAPriest.twoOn(DAY);
    first = two.first();
    second = two.second();
  }

  @Test
  void while_he_is_away_it_says_so_and_leaves_him_free() {
    VEvent before = event(second);
    assertTrue(value(before, Property.DESCRIPTION).startsWith("You celebrate. "), "" + before);
    assertEquals("OPAQUE", value(before, Property.TRANSP));

    awayFrom("17:00");

    VEvent away = event(second);
    assertTrue(
        value(away, Property.DESCRIPTION)
            .startsWith("You are away then; another is to be named to celebrate. Set out by "),
        "" + away);
    assertTrue(value(away, Property.SUMMARY).endsWith("; you are away"), "" + away);
    assertEquals("TRANSPARENT", value(away, Property.TRANSP));
    assertEquals("CONFIRMED", value(away, Property.STATUS), "the Mass stands");
    assertEquals(value(before, Property.UID), value(away, Property.UID));
    assertTrue(value(event(first), Property.DESCRIPTION).startsWith("You celebrate. "));
    assertFalse(
        his.ask().asString().contains(second + "-drive@"), "nobody drives to where he is not");
  }

  @Test
  void it_counts_on_when_he_is_away_and_when_he_is_back_and_with_the_mass_in_between() {
    int before = sequence();

    String absence = awayFrom("17:00");
    int away = sequence();
    assertEquals(before + 1, away);
    assertEquals(away, sequence(), "asking again is no change");

    Asking.change(Asking.mass("sa", DAY + "T18:00"), Map.of("start", DAY + "T18:30"));
    int moved = sequence();
    assertTrue(moved > away, moved + " after " + away);

    Sending.delete("/api/people/cosmas-ilverton/absences/" + absence).then().statusCode(204);
    int back = sequence();
    assertTrue(back > moved, back + " after " + moved);
    assertTrue(value(event(second), Property.DESCRIPTION).startsWith("You celebrate. "));

    Sending.delete("/api/masses/" + second).then().statusCode(204);
    assertTrue(sequence() > back);
  }

  @Test
  void whoever_was_never_away_is_counted_as_the_mass_is() {
    int before = sequence();

    Asking.change(Asking.mass("sa", DAY + "T18:00"), Map.of("start", DAY + "T18:30"));

    assertEquals(before + 1, sequence());
  }

  private static String awayFrom(String hour) {
    return Sending.post(
            "/api/people/cosmas-ilverton/absences", Map.of("from", DAY + "T" + hour, "to", DAY))
        .then()
        .statusCode(201)
        .extract()
        .path("absence.id");
  }

  private int sequence() {
    return CalendarEvents.sequence(event(second));
  }

  private VEvent event(String mass) {
    return Asking.only(CalendarEvents.of(his.ask(), mass + "@"));
  }
}
