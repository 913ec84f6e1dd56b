package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Looks whether a file can be read at all before it is kept. */
@ApplicationScoped
class ReceiveFile {

  private final SendList sent;
  private final WhichList which;

  ReceiveFile(SendList sent, WhichList which) {
    this.sent = sent;
    this.which = which;
  }

  /**
   * Keeps a file.
   *
   * @param said which list, or calendar; {@link WhichList#UNSAID} where the file is to say it. A
   *     file that begins as a calendar is one, whatever is said
   * @return id of the import
   * @throws Refused if it cannot be read as such a file, or has no line below its first, or does
   *     not say which list it is
   */
  UUID keep(String said, String name, byte[] file) {
    try {
      String what = isCalendar(file) ? ImportWords.CALENDAR : said;
      int lines = what.equals(ImportWords.CALENDAR) ? CalendarFile.count(file) : lines(file);
      what = what.equals(WhichList.UNSAID) ? which.find(file) : what;
      return sent.keep(what, name == null ? "" : name, file, lines);
    } catch (BadFile bad) {
      throw bad.refused();
    }
  }

  private static boolean isCalendar(byte[] file) throws BadFile {
    return CalendarEvents.begins(CsvText.parseAny(file).text());
  }

  private static int lines(byte[] file) throws BadFile {
    int lines = RawTable.parse(CsvText.parseAny(file)).lines().size();
    if (lines == 0) {
      throw new Refused(Refusal.Unfit.of("file", say("Below its first line the list is empty.")));
    }
    return lines;
  }
}
