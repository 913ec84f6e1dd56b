package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import vestiary.calendar.Term;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;

/** Takes a list that a program sends in one request. */
@ApplicationScoped
class ReceiveByProgram {

  private final ImportCsv lists;
  private final SendList sent;
  private final BringIn bringIn;
  private final AskImport ask;
  private final KnownNames names;
  private final CalendarSheet calendars;
  private final WhichList which;

  ReceiveByProgram(
      ImportCsv lists,
      SendList sent,
      BringIn bringIn,
      AskImport ask,
      KnownNames names,
      CalendarSheet calendars,
      WhichList which) {
    this.which = which;
    this.calendars = calendars;
    this.lists = lists;
    this.sent = sent;
    this.bringIn = bringIn;
    this.ask = ask;
    this.names = names;
  }

  /**
   * @param id by which it can be undone; empty if nothing was changed
   */
  record Received(ImportCsv.Outcome outcome, String id) {}

  /** Which list it is: as is said, or as the file says where nothing is. */
  String which(String said, byte[] file) {
    try {
      return said.equals(WhichList.UNSAID) ? which.find(file) : said;
    } catch (BadFile bad) {
      throw bad.refused();
    }
  }

  static ImportWhat known(String what) {
    return Term.find(ImportWhat.class, what)
        .orElseThrow(() -> new Refused(new Refusal.NotThere("kind of list", what)));
  }

  /** Tries it or brings it in while the program waits. */
  @Transactional
  Received now(ImportWhat what, byte[] file, SaidColumns said, boolean trial) {
    CsvTable table = table(what, file, said);
    if (trial) {
      return new Received(
          lists.bringIn(what, table, DateWords.ISO, true, ImportCsv.Steps.UNTOLD), "");
    }
    ImportRow row = sent.begin(what.id(), "", table.lines().size());
    ImportCsv.Outcome outcome = bringIn.now(row, what, table);
    return new Received(outcome, row.state() == ImportState.DONE ? row.id.toString() : "");
  }

  /** Has it tried or brought in by a job. */
  @Transactional
  UUID later(ImportWhat what, byte[] file, SaidColumns said, boolean trial) {
    try {
      RawTable table = RawTable.parse(CsvText.parseAny(file));
      SaidColumns asked = said.isSaid() ? said : new SaidColumns("guess", "", "");
      ChosenColumns chosen = asked.chosen(what, table, names.read());
      UUID id = sent.keep(what.id(), "", file, table.lines().size());
      ask.ask(id.toString(), chosen, trial);
      return id;
    } catch (BadFile bad) {
      throw bad.refused();
    }
  }

  /** Has a calendar tried or brought in; a short one is over when it is answered. */
  @Transactional
  UUID calendar(byte[] file, Entries span, boolean trial) {
    try {
      ChosenColumns chosen = calendars.read(span);
      UUID id = sent.keep(ImportWords.CALENDAR, "", file, CalendarFile.count(file));
      ask.ask(id.toString(), chosen, trial);
      return id;
    } catch (BadFile bad) {
      throw bad.refused();
    }
  }

  private CsvTable table(ImportWhat what, byte[] file, SaidColumns said) {
    if (!said.isSaid()) {
      return CsvTable.parse(file, what);
    }
    try {
      RawTable table = RawTable.parse(CsvText.parseAny(file));
      TidyCells tidy = names.read();
      return said.chosen(what, table, tidy).table(what, table, tidy);
    } catch (BadFile bad) {
      throw bad.refused();
    }
  }
}
