package vestiary.cluster;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.stream.Stream;
import vestiary.calendar.EveningRule;
import vestiary.calendar.Evenings;
import vestiary.calendar.OpenEvening;
import vestiary.problem.Asked;
import vestiary.vesting.LadderOrder;
import vestiary.web.Choice;
import vestiary.web.Entries;

/** What stands in the fields of the policies. */
final class PolicyEntries {

  static final List<String> FIELDS =
      List.of(
          "anticipatedFrom",
          "eveningRule",
          "openEvening",
          "ladderOrder",
          "turnMinutes",
          "weekdaySetOut",
          "largeSetOut",
          "largeClearance",
          "countBy",
          "permittedWeekday",
          "permittedSunday");

  private PolicyEntries() {}

  /** The entries with those of the policies. */
  static Entries with(Entries entries, Cluster cluster) {
    Policies p = cluster.policies();
    Evenings evenings = cluster.calendar().evenings();
    return entries
        .with("anticipatedFrom", evenings.from().toString())
        .with("eveningRule", evenings.rule().id())
        .with("openEvening", evenings.open().id())
        .with("ladderOrder", p.ladderOrder().id())
        .with("whiteForAll", String.valueOf(p.whiteForAll()))
        .with("turnMinutes", String.valueOf(p.turnMinutes()))
        .with("weekdaySetOut", String.valueOf(p.weekdaySetOut()))
        .with("largeSetOut", String.valueOf(p.largeSetOut()))
        .with("largeClearance", String.valueOf(p.largeClearance()))
        .with("countBy", p.countBy().id())
        .with("permittedWeekday", String.valueOf(p.permittedWeekday()))
        .with("permittedSunday", String.valueOf(p.permittedSunday()))
        .with("countAlbs", String.valueOf(p.countAlbs()))
        .with("pontificals", String.valueOf(p.pontificals()));
  }

  static SettingsView.Policies fields(Entries entries) {
    return new SettingsView.Policies(
        entries.field("anticipatedFrom"),
        entries.choice("eveningRule", eveningRules()),
        entries.choice("openEvening", openEvenings()),
        entries.choice("ladderOrder", ladderOrders()),
        entries.isTicked("whiteForAll"),
        entries.field("turnMinutes"),
        entries.field("weekdaySetOut"),
        entries.field("largeSetOut"),
        entries.field("largeClearance"),
        entries.choice("countBy", counts()),
        entries.field("permittedWeekday"),
        entries.field("permittedSunday"),
        entries.isTicked("countAlbs"),
        entries.isTicked("pontificals"));
  }

  static ChangeSettings.PolicyRequest request(Entries typed, Asked asked) {
    return new ChangeSettings.PolicyRequest(
        typed.text("anticipatedFrom"),
        typed.text("eveningRule"),
        typed.text("openEvening"),
        typed.text("ladderOrder"),
        typed.isTicked("whiteForAll"),
        number("turnMinutes", typed, asked),
        number("weekdaySetOut", typed, asked),
        number("largeSetOut", typed, asked),
        number("largeClearance", typed, asked),
        typed.text("countBy"),
        number("permittedWeekday", typed, asked),
        number("permittedSunday", typed, asked),
        typed.isTicked("countAlbs"),
        typed.isTicked("pontificals"));
  }

  /** A policy without its number would keep the old one, which the person has just taken out. */
  private static Integer number(String field, Entries typed, Asked asked) {
    String text = typed.text(field);
    if (text.isBlank()) {
      asked.fault(field, field + say(" is missing."));
      return null;
    }
    return asked.number(field, text);
  }

  private static Stream<Choice.Option> eveningRules() {
    return Stream.of(
        Choice.Option.of(EveningRule.PRECEPT.id(), say("the day that obliges comes first")),
        Choice.Option.of(EveningRule.RANK.id(), say("the higher in rank comes first")));
  }

  private static Stream<Choice.Option> openEvenings() {
    return Stream.of(
        Choice.Option.of(OpenEvening.SOLEMNITY.id(), say("the solemnity’s Mass")),
        Choice.Option.of(OpenEvening.WEEKDAY.id(), say("the Mass of the day itself")));
  }

  private static Stream<Choice.Option> ladderOrders() {
    return Stream.of(
        Choice.Option.of(LadderOrder.STOLE.id(), say("in stole over alb")),
        Choice.Option.of(LadderOrder.WHITE.id(), say("in white chasubles")));
  }

  private static Stream<Choice.Option> counts() {
    return Stream.of(
        Choice.Option.of(CountBy.CALENDAR.id(), say("the calendar day")),
        Choice.Option.of(CountBy.LITURGICAL.id(), say("the liturgical day")));
  }
}
