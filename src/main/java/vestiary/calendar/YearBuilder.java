package vestiary.calendar;

import java.util.ArrayList;
import java.util.List;

/** One civil year of one church: every day, in order. */
final class YearBuilder {

  private final ChurchCalendar church;
  private final ObligationRules obligation;
  private final EveningRules evenings;

  YearBuilder(ChurchCalendar church) {
    this.church = church;
    this.obligation = new ObligationRules(church.norms());
    this.evenings = new EveningRules(church.settings().evenings());
  }

  List<Day> build(int year) {
    YearPlan plan = plan(year);
    DayChoices choices = new DayChoices(plan);
    List<Day> days = new ArrayList<>(plan.year().length());
    DayChoice choice = choices.on(1);
    Duty duty = obligation.of(choice, plan.year());
    EveningRules.Eve today = eve(choice, plan.year(), duty);
    for (int day = 1; day <= plan.year().length(); day++) {
      DayChoice next = day < plan.year().length() ? choices.on(day + 1) : null;
      Duty nextDuty = next == null ? null : obligation.of(next, plan.year());
      EveningRules.Eve tomorrow =
          next == null ? newYear(year + 1) : eve(next, plan.year(), nextDuty);
      days.add(day(choice, plan, duty, evenings.between(today, tomorrow)));
      choice = next;
      duty = nextDuty;
      today = tomorrow;
    }
    return days;
  }

  private YearPlan plan(int year) {
    YearPlan plan = YearPlan.of(YearOutline.of(year, church.norms(), church.settings()), church);
    new Transfers(plan, church).apply();
    PastoralTransfers pastoral = new PastoralTransfers(plan, obligation);
    church.propers().onSunday().forEach(pastoral::apply);
    return plan;
  }

  private static Day day(DayChoice choice, YearPlan plan, Duty duty, Evening evening) {
    int day = choice.day();
    TemporalCycle seasons = plan.seasons();
    return new Day(
        plan.year().date(day),
        seasons.season(day),
        seasons.week(day),
        seasons.psalterWeek(day),
        SundayCycle.of(seasons.liturgicalYear(day)),
        WeekdayCycle.of(seasons.liturgicalYear(day)),
        duty,
        choice.celebrations(),
        choice.omitted(),
        choice.transfers(),
        evening);
  }

  private static EveningRules.Eve eve(DayChoice choice, YearOutline year, Duty duty) {
    boolean cameBackADay =
        choice.transfers().stream().anyMatch(t -> t.from().equals(t.to().plusDays(1)));
    return new EveningRules.Eve(
        choice.kept(), year.isSunday(choice.day()), duty.obliges(), cameBackADay);
  }

  /** Nothing stands above Mary, Mother of God, on 1 January, so the next year need not be built. */
  private EveningRules.Eve newYear(int year) {
    YearOutline outline = YearOutline.of(year, church.norms(), church.settings());
    Celebration kept = church.find("mary-mother-of-god").orElseThrow().celebration();
    DayChoice choice = new DayChoice(1, List.of(kept), List.of(), List.of());
    return eve(choice, outline, obligation.of(choice, outline));
  }
}
