package vestiary.cluster;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import vestiary.access.CurrentCluster;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Colour;
import vestiary.calendar.Proper;
import vestiary.problem.Asked;
import vestiary.proper.BindingPropers;
import vestiary.proper.ColourOfADay;
import vestiary.proper.EnteredProper;
import vestiary.proper.ReadPropers;
import vestiary.vesting.ChurchId;

/** The title of a church: a celebration of its calendar, the diocese's included, or its own day. */
@ApplicationScoped
class FillTitular {

  private final CurrentCluster current;
  private final ClusterRows clusters;
  private final ReadPropers propers;
  private final ChurchCalendars calendars;

  FillTitular(
      CurrentCluster current,
      ClusterRows clusters,
      ReadPropers propers,
      ChurchCalendars calendars) {
    this.current = current;
    this.clusters = clusters;
    this.propers = propers;
    this.calendars = calendars;
  }

  /** Notes what is wrong with the title; the row knows its id if the church is there already. */
  void fill(ChurchRow row, SaveChurch.Request request, Asked asked) {
    row.titular = asked.text("titular", request.titular());
    SaveChurch.OwnTitular own = request.ownTitular();
    if (!row.titular.isEmpty()) {
      refuseUnlessTitle(row, asked);
      if (own != null) {
        asked.fault(
            "titular.name", say("The title has one day; leave this empty, or choose none above."));
      }
    } else if (own != null) {
      asked.monthDay("titular.day", own.month(), own.day());
      refuseIfProper(row, own.name(), asked);
    }
    boolean isOwn = row.titular.isEmpty() && own != null;
    row.titularName =
        isOwn ? asked.needed("titular.name", own.name(), SaveChurch.LONGEST_NAME) : "";
    row.titularMonth = isOwn ? own.month() : null;
    row.titularDay = isOwn ? own.day() : null;
    row.titularColour =
        isOwn ? ColourOfADay.of("titular.colour", own.colour(), Colour.WHITE, asked).id() : "";
  }

  private void refuseUnlessTitle(ChurchRow row, Asked asked) {
    CalendarSettings settings = clusters.findById(current.id()).toCalendar();
    if (calendars.of(settings, propersOf(row)).findTitle(row.titular).isEmpty()) {
      asked.fault(
          "titular",
          say(
              "titular \"%s\" is no celebration of this calendar that can be a title; give a name, month, day and colour instead.",
              row.titular));
    }
  }

  /** Else the same celebration would meet itself on its day, and one of both be put off. */
  private void refuseIfProper(ChurchRow row, String name, Asked asked) {
    boolean isProper =
        propersOf(row).stream()
            .anyMatch(
                proper ->
                    proper instanceof Proper.Inscribed brought
                        && brought.name().english().equalsIgnoreCase(String.valueOf(name).strip()));
    if (isProper) {
      asked.fault(
          "titular.name",
          say("\"%s\" is among the days of your own; choose it as the title's day.", name));
    }
  }

  private List<Proper> propersOf(ChurchRow row) {
    List<EnteredProper> entered = propers.all();
    return row.id == null
        ? BindingPropers.all(entered)
        : BindingPropers.on(new ChurchId(row.id), entered, List.of());
  }
}
