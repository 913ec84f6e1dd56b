package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;

/** Lists that a program sends: brought in, followed, undone. */
@Path("/api/imports")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SETTLE_CLUSTER)
class ImportResource {

  private static final int LONGEST_COLUMNS = 4_000;
  private static final int LONGEST_WAIT_SECONDS = 30;

  private final ReceiveByProgram receive;
  private final AskImport ask;
  private final UndoImport undo;
  private final ReadImport read;
  private final DoneImports done;

  ImportResource(
      ReceiveByProgram receive, AskImport ask, UndoImport undo, ReadImport read, DoneImports done) {
    this.receive = receive;
    this.ask = ask;
    this.undo = undo;
    this.read = read;
    this.done = done;
  }

  /**
   * What came of it; {@code lines} counts the good ones.
   *
   * @param id by which it can be undone; empty if nothing was changed
   */
  record ImportBody(
      String what,
      int lines,
      List<BadLine> bad,
      List<String> unknownColumns,
      boolean done,
      String id) {

    static ImportBody from(ReceiveByProgram.Received received) {
      ImportCsv.Outcome outcome = received.outcome();
      return new ImportBody(
          outcome.what().id(),
          outcome.lines(),
          outcome.bad(),
          outcome.unknownColumns(),
          outcome.done(),
          received.id());
    }
  }

  /** The id of a list that is worked on. */
  record Accepted(String id) {}

  /**
   * Tries a list or brings it in.
   *
   * @param what which list, or calendar; without it the columns of the file tell
   * @param columns as {@code church=Church name;date=Datum}: which column of the file holds ours;
   *     {@code guess} to have those guessed that are not said. Without it the file must have our
   *     own names
   * @param same as {@code minutes=60}: what holds on every line, or where the column is empty
   * @param days day-month-year or month-day-year where the file can be read both ways
   * @param church of all events of a calendar, as from and to, its first and last day; a calendar
   *     is worked through as a list in the background is
   * @param background whether to answer at once and go on; {@code GET /api/imports/{id}} tells how
   *     far it is
   */
  @POST
  @Consumes({"text/csv", "text/calendar", MediaType.APPLICATION_OCTET_STREAM, MediaType.TEXT_PLAIN})
  @Operation(summary = "Try a list, or bring it in")
  @Parameter(
      name = "what",
      in = ParameterIn.QUERY,
      description =
          "Which list, or calendar. Left out, the columns of the file tell which list it is, and a"
              + " file that begins as iCalendar is a calendar; it is refused where they fit none or"
              + " several",
      example = "masses",
      schema = @Schema(type = SchemaType.STRING))
  public Response bringIn(
      @QueryParam("what") String what,
      @QueryParam("dryRun") String dryRun,
      @QueryParam("columns") String columns,
      @QueryParam("same") String same,
      @QueryParam("days") String days,
      @QueryParam("background") String background,
      @QueryParam("church") String church,
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      byte[] file) {
    Asked asked = new Asked();
    String said = asked.text("what", what, 40);
    boolean isTrial = !flag("dryRun", dryRun, asked).equals("false");
    boolean isLater = flag("background", background, asked).equals("true");
    SaidColumns columnsSaid =
        new SaidColumns(
            asked.text("columns", columns, LONGEST_COLUMNS),
            asked.text("same", same, LONGEST_COLUMNS),
            asked.text("days", days));
    asked.refuseIfFaulty();
    String list = receive.which(said, Asked.body(file));
    if (list.equals(ImportWords.CALENDAR)) {
      Entries span =
          Entries.empty()
              .with(CalendarSheet.CHURCH, asked.text(CalendarSheet.CHURCH, church))
              .with(CalendarSheet.FROM, asked.text(CalendarSheet.FROM, from))
              .with(CalendarSheet.TO, asked.text(CalendarSheet.TO, to));
      return accepted(receive.calendar(Asked.body(file), span, isTrial));
    }
    ImportWhat known = ReceiveByProgram.known(list);
    if (isLater) {
      return accepted(receive.later(known, Asked.body(file), columnsSaid, isTrial));
    }
    ReceiveByProgram.Received received = receive.now(known, Asked.body(file), columnsSaid, isTrial);
    if (!isTrial && !received.outcome().done()) {
      throw new Refused(refusal(received.outcome()));
    }
    return Response.ok(ImportBody.from(received)).build();
  }

  private Response accepted(UUID id) {
    ask.look();
    return Response.accepted(new Accepted(id.toString()))
        .location(URI.create("/api/imports/" + id))
        .build();
  }

  /** What was brought in, the last first. */
  @GET
  @Transactional
  public List<ImportProgress> all() {
    return done.rows().stream().map(row -> ImportProgress.of(row, 1)).toList();
  }

  /**
   * How far it is, and what came of it.
   *
   * @param page which of the pages of bad lines, from 1; each has a hundred
   * @param wait so many seconds at most until it is over; 0 for how it is now
   */
  @GET
  @Path("/{id}")
  public ImportProgress one(
      @RestPath String id, @QueryParam("page") String page, @QueryParam("wait") String wait) {
    Asked asked = new Asked();
    int seconds = asked.whole("wait", asked.number("wait", wait), 0, LONGEST_WAIT_SECONDS, 0);
    int wanted = asked.whole("page", asked.number("page", page), 1, 1000, 1);
    asked.refuseIfFaulty();
    read.get(id);
    ask.await(id, Duration.ofSeconds(seconds));
    return ImportProgress.of(read.get(id), wanted);
  }

  /** Puts everything back that it changed. */
  @DELETE
  @Path("/{id}")
  public void undo(@RestPath String id) {
    undo.undo(id);
  }

  private static String flag(String field, String given, Asked asked) {
    String text = asked.text(field, given);
    if (!List.of("", "true", "false").contains(text)) {
      asked.fault(field, say("%s \"%s\" is not known; it can be true, false.", field, text));
    }
    return text;
  }

  private static Refusal refusal(ImportCsv.Outcome outcome) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("what", outcome.what().id());
    members.put("lines", outcome.lines());
    members.put("bad", outcome.bad());
    members.put("unknownColumns", outcome.unknownColumns());
    return new Refusal.BadLines(
        ImportWords.sentence(ImportResult.of(outcome), false, false), members);
  }
}
