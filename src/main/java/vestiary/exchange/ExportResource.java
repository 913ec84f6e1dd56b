package vestiary.exchange;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.calendar.Term;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Lists as files, for programs and for whoever follows a link. */
@Path("/api/exports")
class ExportResource {

  private static final String TABLE = "text/csv;charset=UTF-8";

  private final WriteCsv lists;

  ExportResource(WriteCsv lists) {
    this.lists = lists;
  }

  @GET
  @Path("/{what}.csv")
  @Produces(TABLE)
  @Transactional
  @Needs(Action.TAKE_OUT)
  public Response list(@RestPath String what) {
    ImportWhat list =
        Term.find(ImportWhat.class, what)
            .orElseThrow(() -> new Refused(new Refusal.NotThere("list", what)));
    return Response.ok(lists.text(list), TABLE)
        .header(
            HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"%s.csv\"".formatted(list.id()))
        .build();
  }
}
