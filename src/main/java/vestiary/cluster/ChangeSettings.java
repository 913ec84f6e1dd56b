package vestiary.cluster;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import vestiary.access.CurrentCluster;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Evenings;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.OfferedCalendar;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.proper.KnownCelebrations;
import vestiary.proper.LeftBehind;
import vestiary.proper.ReadPropers;

/** Changes what the cluster is called, which calendar it keeps, and its policies. */
@ApplicationScoped
@Transactional
public class ChangeSettings {

  private static final int LONGEST_SET_OUT = 240;
  private static final int LONGEST_TURN = 60;
  private static final int MOST_MASSES = 9;

  private final CurrentCluster current;
  private final ClusterRows clusters;
  private final BoundChurches churches;
  private final ReadPropers propers;
  private final ClusterWord word;

  ChangeSettings(
      CurrentCluster current,
      ClusterRows clusters,
      BoundChurches churches,
      ReadPropers propers,
      ClusterWord word) {
    this.current = current;
    this.clusters = clusters;
    this.churches = churches;
    this.propers = propers;
    this.word = word;
  }

  /**
   * Settings as they were typed; what is not given stays as it is. A calendar chosen anew brings
   * its own options, unless they are given too.
   *
   * @param version of the settings that the person looked at, or {@code null} to change them anyway
   */
  public record Request(
      String name,
      String calendar,
      String epiphany,
      String ascension,
      String corpusChristi,
      String timeZone,
      List<String> languages,
      PolicyRequest policies,
      Integer version) {}

  /** The policies, each as the API names it. */
  public record PolicyRequest(
      String anticipatedFrom,
      String eveningRule,
      String openEvening,
      String ladderOrder,
      Boolean whiteForAll,
      Integer turnMinutes,
      Integer weekdaySetOut,
      Integer largeSetOut,
      Integer largeClearance,
      String countBy,
      Integer permittedWeekday,
      Integer permittedSunday,
      Boolean countAlbs,
      Boolean pontificals) {
    static final PolicyRequest UNCHANGED =
        new PolicyRequest(
            null, null, null, null, null, null, null, null, null, null, null, null, null, null);
  }

  /**
   * Keeps the settings.
   *
   * @throws Refused with every unfit field, or if they were changed meanwhile; nothing is changed
   *     then
   */
  public void change(Request request) {
    churches.waitForTurn();
    ClusterRow row = clusters.findById(current.id());
    if (request.version() != null && request.version() != row.version) {
      throw new Refused(new Refusal.Outdated("the settings"));
    }
    Asked asked = new Asked();
    Wanted wanted = read(request, row.toCluster(List.of()), asked);
    asked.refuseIfFaulty();
    row.name = wanted.name();
    if (!row.setUp) {
      row.word = word.fitting(row.name, row.word);
    }
    row.keep(wanted.settings());
    row.timeZone = wanted.zone().getId();
    row.keepLanguages(wanted.languages());
    row.keep(wanted.policies());
    row.setUp = true;
    clusters.flush();
  }

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    read(request, clusters.findById(current.id()).toCluster(List.of()), asked);
    return asked.faults();
  }

  private record Wanted(
      String name,
      CalendarSettings settings,
      ZoneId zone,
      List<Locale> languages,
      Policies policies) {}

  private Wanted read(Request request, Cluster before, Asked asked) {
    PolicyRequest policies =
        request.policies() == null ? PolicyRequest.UNCHANGED : request.policies();
    Wanted wanted = wanted(request, policies, before, asked);
    if (!asked.isFaulty()) {
      fitCelebrations(wanted.settings(), asked);
    }
    return wanted;
  }

  /** Titles and propers may be about celebrations that the calendar chosen anew does not have. */
  private void fitCelebrations(CalendarSettings settings, Asked asked) {
    KnownCelebrations known = new KnownCelebrations(settings, churches.titled(), propers.all());
    LeftBehind.under(settings.calendar(), known)
        .forEach(sentence -> asked.fault("calendar", sentence));
  }

  private static Wanted wanted(
      Request request, PolicyRequest policies, Cluster before, Asked asked) {
    return new Wanted(
        request.name() == null ? before.name() : asked.needed("name", request.name(), 200),
        calendar(request, policies, before.calendar(), asked),
        asked.zone("timeZone", request.timeZone(), before.zone()),
        languages(request.languages(), before.languages(), asked),
        policies(policies, before.policies(), asked));
  }

  private static CalendarSettings calendar(
      Request request, PolicyRequest policies, CalendarSettings before, Asked asked) {
    String id = asked.text("calendar", request.calendar());
    CalendarSettings base = id.isEmpty() ? before : chosen(id, before, asked);
    return new CalendarSettings(
        base.calendar(),
        asked.term("epiphany", request.epiphany(), base.epiphany()),
        asked.term("ascension", request.ascension(), base.ascension()),
        asked.term("corpusChristi", request.corpusChristi(), base.corpusChristi()),
        evenings(policies, before.evenings(), asked));
  }

  private static Evenings evenings(PolicyRequest policies, Evenings before, Asked asked) {
    return new Evenings(
        asked.term("policies.eveningRule", policies.eveningRule(), before.rule()),
        asked.term("policies.openEvening", policies.openEvening(), before.open()),
        policies.anticipatedFrom() == null
            ? before.from()
            : asked.time("policies.anticipatedFrom", policies.anticipatedFrom()));
  }

  private static CalendarSettings chosen(String id, CalendarSettings before, Asked asked) {
    if (id.equals(before.calendar())) {
      return before;
    }
    List<String> offered = LiturgicalCalendar.offered().stream().map(OfferedCalendar::id).toList();
    if (!offered.contains(id)) {
      asked.fault(
          "calendar",
          say("calendar \"%s\" is not known; it can be %s.", id, String.join(", ", offered)));
      return before;
    }
    return CalendarSettings.defaultsOf(id);
  }

  private static List<Locale> languages(List<String> asked, List<Locale> before, Asked faults) {
    if (asked == null || asked.isEmpty()) {
      return before;
    }
    Set<String> known = Set.of(Locale.getISOLanguages());
    for (String tag : asked) {
      if (tag == null || !known.contains(Locale.forLanguageTag(tag).getLanguage())) {
        faults.fault(
            "languages", say("languages \"%s\" is no language; write it as en or es.", tag));
      }
    }
    return faults.isFaulty() ? before : asked.stream().map(Locale::forLanguageTag).toList();
  }

  private static Policies policies(PolicyRequest request, Policies before, Asked asked) {
    return new Policies(
        asked.term("policies.ladderOrder", request.ladderOrder(), before.ladderOrder()),
        request.whiteForAll() == null ? before.whiteForAll() : request.whiteForAll(),
        asked.whole(
            "policies.turnMinutes", request.turnMinutes(), 0, LONGEST_TURN, before.turnMinutes()),
        setOut("weekdaySetOut", request.weekdaySetOut(), before.weekdaySetOut(), asked),
        setOut("largeSetOut", request.largeSetOut(), before.largeSetOut(), asked),
        setOut("largeClearance", request.largeClearance(), before.largeClearance(), asked),
        asked.term("policies.countBy", request.countBy(), before.countBy()),
        masses("permittedWeekday", request.permittedWeekday(), before.permittedWeekday(), asked),
        masses("permittedSunday", request.permittedSunday(), before.permittedSunday(), asked),
        request.countAlbs() == null ? before.countAlbs() : request.countAlbs(),
        request.pontificals() == null ? before.pontificals() : request.pontificals());
  }

  private static int setOut(String field, Integer value, int before, Asked asked) {
    return asked.whole("policies." + field, value, 0, LONGEST_SET_OUT, before);
  }

  private static int masses(String field, Integer value, int before, Asked asked) {
    return asked.whole("policies." + field, value, 1, MOST_MASSES, before);
  }
}
