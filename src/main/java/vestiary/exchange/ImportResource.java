package vestiary.exchange;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Brings in a list that a program sends. */
@Path("/api/imports")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SETTLE_CLUSTER)
class ImportResource {

  private final ImportCsv imports;

  ImportResource(ImportCsv imports) {
    this.imports = imports;
  }

  /** What came of it; {@code lines} counts the good ones. */
  record ImportBody(
      String what, int lines, List<BadLine> bad, List<String> unknownColumns, boolean done) {

    static ImportBody from(ImportCsv.Outcome outcome) {
      return new ImportBody(
          outcome.what().id(),
          outcome.lines(),
          outcome.bad(),
          outcome.unknownColumns(),
          outcome.done());
    }
  }

  @POST
  @Consumes({"text/csv", MediaType.APPLICATION_OCTET_STREAM, MediaType.TEXT_PLAIN})
  public ImportBody bringIn(
      @QueryParam("what") String what, @QueryParam("dryRun") String dryRun, byte[] file) {
    Asked asked = new Asked();
    String list = asked.needed("what", what, 40);
    boolean isTrial = isTrial(dryRun, asked);
    asked.refuseIfFaulty();
    ImportCsv.Outcome outcome =
        imports.bringIn(known(list), Asked.body(file), DateWords.ISO, isTrial);
    if (!isTrial && !outcome.done()) {
      throw new Refused(refusal(outcome));
    }
    return ImportBody.from(outcome);
  }

  private static ImportWhat known(String what) {
    return Term.find(ImportWhat.class, what)
        .orElseThrow(() -> new Refused(new Refusal.NotThere("kind of list", what)));
  }

  private static boolean isTrial(String dryRun, Asked asked) {
    String text = asked.text("dryRun", dryRun);
    if (!List.of("", "true", "false").contains(text)) {
      asked.fault("dryRun", "dryRun \"%s\" is not known; it can be true, false.".formatted(text));
    }
    return !text.equals("false");
  }

  private static Refusal refusal(ImportCsv.Outcome outcome) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("what", outcome.what().id());
    members.put("lines", outcome.lines());
    members.put("bad", outcome.bad());
    members.put("unknownColumns", outcome.unknownColumns());
    return new Refusal.BadLines(ImportWords.sentence(outcome, false), members);
  }
}
