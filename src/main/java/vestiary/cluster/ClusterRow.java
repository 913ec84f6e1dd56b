package vestiary.cluster;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;
import org.hibernate.annotations.OptimisticLock;
import vestiary.calendar.AscensionOn;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.CorpusChristiOn;
import vestiary.calendar.EpiphanyOn;
import vestiary.calendar.EveningRule;
import vestiary.calendar.Evenings;
import vestiary.calendar.OpenEvening;
import vestiary.calendar.Proper;
import vestiary.calendar.Term;
import vestiary.vesting.LadderOrder;

@Entity
@Table(name = "cluster")
class ClusterRow {

  @Id
  @Column(name = "cluster_id")
  UUID id;

  String name;
  String word;
  String calendar;
  String epiphany;
  String ascension;
  String corpusChristi;
  String timeZone;
  String[] languages;
  LocalTime anticipatedFrom;
  String eveningRule;
  String openEvening;
  String ladderOrder;
  boolean whiteForAll;
  int turnMinutes;
  int weekdaySetOut;
  int largeSetOut;
  int largeClearance;
  String countBy;
  int permittedWeekday;
  int permittedSunday;
  boolean countAlbs;
  boolean pontificals;
  boolean setUp;
  LocalDate demoMonday;

  /** Moved on by reading alone, which must not make somebody's open form outdated. */
  @OptimisticLock(excluded = true)
  LocalDate unfoldedUntil;

  @Version int version;

  /**
   * @param propers what binds all its churches
   */
  Cluster toCluster(List<Proper> propers) {
    return new Cluster(
        id,
        name,
        toCalendar(),
        propers,
        ZoneId.of(timeZone),
        Stream.of(languages).map(Locale::forLanguageTag).toList(),
        toPolicies(),
        setUp,
        version);
  }

  CalendarSettings toCalendar() {
    return new CalendarSettings(
        calendar,
        Term.find(EpiphanyOn.class, epiphany).orElseThrow(),
        Term.find(AscensionOn.class, ascension).orElseThrow(),
        Term.find(CorpusChristiOn.class, corpusChristi).orElseThrow(),
        new Evenings(
            Term.find(EveningRule.class, eveningRule).orElseThrow(),
            Term.find(OpenEvening.class, openEvening).orElseThrow(),
            anticipatedFrom));
  }

  void keep(CalendarSettings settings) {
    calendar = settings.calendar();
    epiphany = settings.epiphany().id();
    ascension = settings.ascension().id();
    corpusChristi = settings.corpusChristi().id();
    eveningRule = settings.evenings().rule().id();
    openEvening = settings.evenings().open().id();
    anticipatedFrom = settings.evenings().from();
  }

  void keep(Policies policies) {
    ladderOrder = policies.ladderOrder().id();
    whiteForAll = policies.whiteForAll();
    turnMinutes = policies.turnMinutes();
    weekdaySetOut = policies.weekdaySetOut();
    largeSetOut = policies.largeSetOut();
    largeClearance = policies.largeClearance();
    countBy = policies.countBy().id();
    permittedWeekday = policies.permittedWeekday();
    permittedSunday = policies.permittedSunday();
    countAlbs = policies.countAlbs();
    pontificals = policies.pontificals();
  }

  void keepLanguages(List<Locale> chosen) {
    languages = chosen.stream().map(Locale::toLanguageTag).toArray(String[]::new);
  }

  private Policies toPolicies() {
    return new Policies(
        Term.find(LadderOrder.class, ladderOrder).orElseThrow(),
        whiteForAll,
        turnMinutes,
        weekdaySetOut,
        largeSetOut,
        largeClearance,
        Term.find(CountBy.class, countBy).orElseThrow(),
        permittedWeekday,
        permittedSunday,
        countAlbs,
        pontificals);
  }
}
