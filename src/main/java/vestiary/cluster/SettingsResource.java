package vestiary.cluster;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Locale;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.calendar.Evenings;
import vestiary.problem.Asked;

/** What the cluster is called, which calendar it keeps, and its policies. */
@Path("/api/settings")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SETTLE_CLUSTER)
class SettingsResource {

  private final ReadCluster cluster;
  private final ChangeSettings change;

  SettingsResource(ReadCluster cluster, ChangeSettings change) {
    this.cluster = cluster;
    this.change = change;
  }

  /** The settings as the API writes them; the fields of a request that are not given stay. */
  record SettingsBody(
      String name,
      String calendar,
      String epiphany,
      String ascension,
      String corpusChristi,
      String timeZone,
      List<String> languages,
      ChangeSettings.PolicyRequest policies) {
    static SettingsBody from(Cluster cluster) {
      Policies p = cluster.policies();
      Evenings evenings = cluster.calendar().evenings();
      return new SettingsBody(
          cluster.name(),
          cluster.calendar().calendar(),
          cluster.calendar().epiphany().id(),
          cluster.calendar().ascension().id(),
          cluster.calendar().corpusChristi().id(),
          cluster.zone().getId(),
          cluster.languages().stream().map(Locale::toLanguageTag).toList(),
          new ChangeSettings.PolicyRequest(
              evenings.from().toString(),
              evenings.rule().id(),
              evenings.open().id(),
              p.ladderOrder().id(),
              p.whiteForAll(),
              p.turnMinutes(),
              p.weekdaySetOut(),
              p.largeSetOut(),
              p.largeClearance(),
              p.countBy().id(),
              p.permittedWeekday(),
              p.permittedSunday(),
              p.countAlbs(),
              p.pontificals()));
    }

    ChangeSettings.Request toRequest() {
      return new ChangeSettings.Request(
          name, calendar, epiphany, ascension, corpusChristi, timeZone, languages, policies, null);
    }
  }

  @GET
  @Transactional
  public SettingsBody read() {
    return SettingsBody.from(cluster.cluster());
  }

  @PUT
  @Consumes(MediaType.APPLICATION_JSON)
  public SettingsBody change(SettingsBody body) {
    Asked.body(body);
    change.change(body.toRequest());
    return read();
  }
}
