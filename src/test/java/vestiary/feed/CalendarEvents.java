package vestiary.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.restassured.response.Response;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;

/** A calendar as a program reads it that has nothing to do with ours (ical4j). */
final class CalendarEvents {

  private CalendarEvents() {}

  /** All of an answer, which must be a calendar without a fault. */
  static List<VEvent> of(Response answer) {
    assertEquals(200, answer.statusCode(), answer.asString());
    try {
      Calendar read = new CalendarBuilder().build(new StringReader(answer.asString()));
      assertFalse(read.validate().hasErrors(), read.validate().toString());
      return read.getComponents(Component.VEVENT);
    } catch (IOException | ParserException unreadable) {
      throw new AssertionError(answer.asString(), unreadable);
    }
  }

  /** Those whose UID begins so. */
  static List<VEvent> of(Response answer, String uid) {
    return of(answer).stream().filter(event -> value(event, Property.UID).startsWith(uid)).toList();
  }

  static int sequence(VEvent event) {
    return Integer.parseInt(value(event, Property.SEQUENCE));
  }

  /** Empty where there is none. */
  static String value(VEvent event, String property) {
    return event.getProperty(property).map(p -> ((Property) p).getValue()).orElse("");
  }
}
