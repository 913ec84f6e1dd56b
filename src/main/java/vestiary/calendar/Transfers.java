package vestiary.calendar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Moves every solemnity that meets a higher day to a free one, all of a year together.
 *
 * <p>In 2008 Saint Joseph fell in Holy Week and went back to Saturday 15 March, and the
 * Annunciation fell in the Easter octave and went on to Monday 31 March. Source: UNLY 5, 56, 60;
 * Notitiae 26 (1990) 160 and 42 (2006) 96; note of the Congregation for Divine Worship of 11 May
 * 2020.
 */
final class Transfers {

  private static final String NEXT_FREE_DAY = "UNLY 60";
  private static final String JOSEPH = "joseph-spouse-of-mary";
  private static final String BAPTIST = "nativity-of-john-the-baptist";
  private static final String SACRED_HEART = "sacred-heart";

  private final YearOutline year;
  private final YearPlan plan;
  private final CalendarNorms norms;
  private final ChurchPropers propers;

  Transfers(YearPlan plan, ChurchCalendar church) {
    this.year = plan.year();
    this.plan = plan;
    this.norms = church.norms();
    this.propers = church.propers();
  }

  void apply() {
    norms.decisions().forEach(this::moveByDecision);
    propers.decisions().forEach(this::moveByDecision);
    norms.keptOnSundayBeside().forEach(this::moveToTheSundayBeside);
    moveJosephOutOfHolyWeek();
    moveAnnunciationPastTheOctave();
    partTheBaptistFromTheSacredHeart();
    impeded().forEach(this::moveToNextFreeDay);
  }

  private void moveByDecision(Decision decision) {
    if (decision.date().getYear() != year.year()) return;
    int from = plan.findDay(decision.celebration());
    int to = decision.date().getDayOfYear();
    if (from == 0) return;
    if (from == to) {
      plan.hold(decision.celebration(), to, decision.source());
      return;
    }
    Sentence why = Sentence.of("so it was decided for this year.");
    plan.move(decision.celebration(), from, to, why, decision.source());
  }

  /** England and Wales: Saturday 15 August 2026 is kept on Sunday 16 August. */
  private void moveToTheSundayBeside(String id) {
    int day = plan.dayOf(id);
    if (day == 0 || year.sundayBeside(day) == day) return;
    plan.move(id, day, year.sundayBeside(day), holyDaysOfThePlace());
  }

  private String holyDaysOfThePlace() {
    return "Holy days of " + norms.offered().name().english() + " (canon 1246 § 2)";
  }

  /** On the Saturday before Palm Sunday; in Ireland in 2035, where that is Patrick's, on Friday. */
  private void moveJosephOutOfHolyWeek() {
    int day = plan.dayOf(JOSEPH);
    if (isWithin(day, year.easter() - 7, year.easter() - 1)) {
      plan.move(JOSEPH, day, freeDayUpTo(year.easter() - 8), "Notitiae 42 (2006) 96");
    }
  }

  private void moveAnnunciationPastTheOctave() {
    int day = plan.dayOf("annunciation");
    if (isWithin(day, year.easter() - 7, year.easter() + 7)) {
      plan.move("annunciation", day, year.easter() + 8, NEXT_FREE_DAY);
    }
  }

  /** In 2022 on 23 June; where the Baptist is patron he stays and the Sacred Heart goes. */
  private void partTheBaptistFromTheSacredHeart() {
    int day = plan.dayOf(BAPTIST);
    if (day == 0 || day != plan.dayOf(SACRED_HEART)) return;
    String goes = propers.isPatron(BAPTIST) ? SACRED_HEART : BAPTIST;
    Sentence stays =
        propers.isPatron(BAPTIST)
            ? Sentence.of("two solemnities meet on this day and that of the patron stays.")
            : Sentence.of("two solemnities meet on this day and that of the Lord stays.");
    plan.move(goes, day, day - 1, stays, "Congregation for Divine Worship, note of 11 May 2020");
  }

  /** Solemnities that do not prevail on their day, the highest first. */
  private List<Impeded> impeded() {
    List<Impeded> impeded = new ArrayList<>();
    for (int day = 1; day <= year.length(); day++) {
      List<Entry> entries = plan.on(day);
      for (int i = 0; i < entries.size(); i++) {
        Entry entry = entries.get(i);
        if (entry.rank() == Rank.SOLEMNITY && plan.prevailing(day) != entry.celebration()) {
          impeded.add(new Impeded(entry, day));
        }
      }
    }
    impeded.sort(Comparator.comparing(i -> i.entry().precedence()));
    return impeded;
  }

  private void moveToNextFreeDay(Impeded impeded) {
    int day = impeded.day() + 1;
    while (day <= year.length() && !isFree(day)) day++;
    if (day > year.length()) day = freeDayUpTo(impeded.day() - 1);
    plan.move(impeded.entry().id(), impeded.day(), day, source(impeded.day()));
  }

  private String source(int impededDay) {
    boolean bySunday = plan.prevailing(impededDay).precedence() == Precedence.PRIVILEGED_SUNDAY;
    return bySunday ? "UNLY 5, 60" : NEXT_FREE_DAY;
  }

  /** The nearest free day that is not later; also when the days left in the year are taken. */
  private int freeDayUpTo(int latest) {
    int day = latest;
    while (!isFree(day)) day--;
    return day;
  }

  private boolean isFree(int day) {
    return plan.prevailing(day).precedence().number() > 8;
  }

  private static boolean isWithin(int day, int first, int last) {
    return first <= day && day <= last;
  }

  private record Impeded(Entry entry, int day) {}
}
