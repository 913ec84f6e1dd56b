package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import vestiary.calendar.Term;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Looks whether a file can be read at all before it is kept. */
@ApplicationScoped
class ReceiveFile {

  private final SendList sent;

  ReceiveFile(SendList sent) {
    this.sent = sent;
  }

  /**
   * Keeps a file.
   *
   * @param what which list, or calendar
   * @return id of the import
   * @throws Refused if it cannot be read as such a file, or has no line below its first
   */
  UUID keep(String what, String name, byte[] file) {
    try {
      int lines =
          Term.find(ImportWhat.class, what).isPresent() ? lines(file) : CalendarFile.count(file);
      return sent.keep(what, name == null ? "" : name, file, lines);
    } catch (BadFile bad) {
      throw bad.refused();
    }
  }

  private static int lines(byte[] file) throws BadFile {
    int lines = RawTable.parse(CsvText.parseAny(file)).lines().size();
    if (lines == 0) {
      throw new Refused(Refusal.Unfit.of("file", say("Below its first line the list is empty.")));
    }
    return lines;
  }
}
