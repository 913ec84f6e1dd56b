package vestiary.ordo;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.web.Speech;

/**
 * The ordo of a liturgical year as files, at the address of its page: for the calendar of a
 * telephone, and for a spreadsheet.
 */
@Path("/year")
class YearFiles {

  private static final String CALENDAR = "text/calendar;charset=UTF-8";
  private static final String TABLE = "text/csv;charset=UTF-8";

  private static final String YEAR =
      "The civil year in which most of the liturgical year falls, 1971 to 2300";
  private static final String CHURCH = "Short name of the one church whose days are wanted";
  private static final String NOT_THERE = "No such church, or a year not from 1971 to 2300";

  private final ReadOrdo ordo;

  YearFiles(ReadOrdo ordo) {
    this.ordo = ordo;
  }

  @GET
  @Transactional
  @Path("/{year}.ics")
  @Produces(CALENDAR)
  @Operation(
      summary = "The ordo of a liturgical year as iCalendar (RFC 5545)",
      description =
          "One event a day, and one more for each church that keeps the day otherwise. The same days give the same file.")
  @APIResponse(responseCode = "200", description = "The calendar")
  @APIResponse(responseCode = "404", description = NOT_THERE)
  public Response calendar(
      @Parameter(description = YEAR, example = "2027") @RestPath String year,
      @Parameter(description = CHURCH) @QueryParam("church") String church) {
    return file(year, church, "ics", CALENDAR, o -> new OrdoCalendar(o).text());
  }

  @GET
  @Transactional
  @Path("/{year}.csv")
  @Produces(TABLE)
  @Operation(
      summary = "The ordo of a liturgical year as CSV (RFC 4180)",
      description =
          "One line a day with an empty cell for the church, and one more for each church that keeps the day otherwise.")
  @APIResponse(
      responseCode = "200",
      description = "The table, its first line the names of the columns")
  @APIResponse(responseCode = "404", description = NOT_THERE)
  public Response table(
      @Parameter(description = YEAR, example = "2027") @RestPath String year,
      @Parameter(description = CHURCH) @QueryParam("church") String church) {
    return file(year, church, "csv", TABLE, o -> new OrdoTable(o).text());
  }

  private Response file(
      String year, String church, String kind, String type, Function<Ordo, String> text) {
    Ordo found = ordo.read(LiturgicalYear.parse(year), church);
    String name =
        "ordo-%d%s.%s"
            .formatted(
                found.year().number(),
                found.findChurch().map(c -> "-" + c.slug()).orElse(""),
                kind);
    return Response.ok(Speech.forTheRecord(() -> text.apply(found)), type)
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
        .build();
  }
}
