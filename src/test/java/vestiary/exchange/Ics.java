package vestiary.exchange;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Calendar files as other programs write them. */
final class Ics {

  private Ics() {}

  /** A calendar of these events, each with its lines between bars. */
  static byte[] file(String... events) {
    String all =
        Arrays.stream(events)
            .map(event -> "BEGIN:VEVENT\r\n" + event.replace("|", "\r\n") + "\r\nEND:VEVENT\r\n")
            .collect(Collectors.joining());
    return calendar(all);
  }

  /** A calendar that holds this. */
  static byte[] calendar(String inside) {
    return ("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//A parish//EN\r\n"
            + inside
            + "END:VCALENDAR\r\n")
        .getBytes(StandardCharsets.UTF_8);
  }
}
