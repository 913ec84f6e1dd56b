package vestiary.schedule;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;
import vestiary.calendar.Colour;
import vestiary.calendar.Leave;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassOption;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Permission;
import vestiary.calendar.Term;
import vestiary.calendar.Verdict;
import vestiary.web.Choice;
import vestiary.web.ColourChoice;
import vestiary.web.Entries;
import vestiary.web.NormWords;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/**
 * What a form offers for a Mass at one church, date and time: the kinds that are permitted then, by
 * whatever leave, and of the chosen kind the celebrations and colours that the norms leave open.
 */
final class OfferedChoices {

  /** Said by somebody's judgement or order, so that the form asks whose. */
  private static final Set<MassKind> BY_LEAVE = Set.of(MassKind.VOTIVE, MassKind.VARIOUS_NEEDS);

  private final BiFunction<String, Leave, MassRuling> rulings;
  private final Entries input;
  private final Locale locale;

  /**
   * Choices for one church, date and time.
   *
   * @param rulings what the norms say there of a kind ("" lets the hour decide) and a leave
   */
  OfferedChoices(BiFunction<String, Leave, MassRuling> rulings, Entries input, Locale locale) {
    this.rulings = rulings;
    this.input = input;
    this.locale = locale;
  }

  /** What can be offered before church, date and time are known. */
  static MassChoices unknown(Entries input) {
    return new MassChoices(
        say("Choose church, date and time; the calendar then says what is celebrated."),
        Choice.of(List.of(new Choice.Option("", say("as the calendar says"), true))),
        false,
        input.field("votiveOf"),
        false,
        Choice.of(List.of()),
        Choice.of(List.of()),
        true,
        "",
        new ColourChoice(List.of(), ""),
        input.text("mass").equals(MassKind.ORDINATION.id()),
        input.field("newPriests"),
        input.field("newDeacons"),
        List.of());
  }

  MassChoices choices() {
    Leave leave = Term.find(Leave.class, input.text("leave")).orElse(Leave.NONE);
    MassRuling ruling = rulings.apply(input.text("mass"), leave);
    MassOption option = ruling.find(input.text("celebration")).orElse(ruling.options().get(0));
    boolean asksOfWhat = BY_LEAVE.contains(ruling.kind());
    boolean needsLeave = asksOfWhat || isPermittedByLeaveAlone(ruling.kind());
    List<Colour> colours = option.colours();
    return new MassChoices(
        says(ruling, option),
        masses(),
        asksOfWhat,
        input.field("votiveOf"),
        needsLeave,
        leaves(leave),
        celebrations(ruling),
        Term.find(Colour.class, input.text("colour")).filter(colours::contains).isEmpty(),
        say("as the calendar says: ") + Speech.colour(colours.get(0)),
        new ColourChoice(
            colours.stream()
                .map(
                    c ->
                        new ColourChoice.Option(
                            new Ribbon(c, Speech.colour(c)), c.id().equals(input.text("colour"))))
                .toList(),
            input.error("colour")),
        ruling.kind() == MassKind.ORDINATION,
        input.field("newPriests"),
        input.field("newDeacons"),
        notPermitted());
  }

  private String says(MassRuling ruling, MassOption option) {
    String day = ruling.day().kept().name().in(locale);
    String permission =
        ruling.permission().verdict() == Verdict.NOT_PERMITTED
            ? NormWords.of(ruling.permission().said())
            : NormWords.of(option.why());
    return "%s: %s. %s".formatted(day, Speech.colours(option.colours()), permission);
  }

  private Choice masses() {
    List<Choice.Option> options = new ArrayList<>();
    MassKind usual = rulings.apply("", Leave.NONE).kind();
    options.add(
        new Choice.Option(
            "",
            Speech.say("As the hour says: %s", MassKindWords.of(usual)),
            input.text("mass").isEmpty()));
    for (MassKind kind : MassKind.values()) {
      boolean chosen = kind.id().equals(input.text("mass"));
      if (chosen || isPermittedBySomeLeave(kind)) {
        options.add(new Choice.Option(kind.id(), MassKindWords.of(kind), chosen));
      }
    }
    return new Choice(options, input.error("mass"));
  }

  private Choice leaves(Leave chosen) {
    List<String> words =
        List.of(
            say("the celebrant's free choice"),
            say("the celebrant, for a real need"),
            say("the rector of the church, for a real need"),
            say("the diocesan bishop"));
    List<Choice.Option> options = new ArrayList<>();
    for (Leave leave : Leave.values()) {
      options.add(new Choice.Option(leave.id(), words.get(leave.ordinal()), leave == chosen));
    }
    return new Choice(options, input.error("leave"));
  }

  private Choice celebrations(MassRuling ruling) {
    List<Choice.Option> options = new ArrayList<>();
    String kept = ruling.options().get(0).celebration().name().in(locale);
    options.add(
        new Choice.Option(
            "", say("As the calendar says: ") + kept, input.text("celebration").isEmpty()));
    ruling.options().stream()
        .skip(1)
        .map(o -> o.celebration())
        .map(
            c ->
                new Choice.Option(
                    c.id(), c.name().in(locale), c.id().equals(input.text("celebration"))))
        .forEach(options::add);
    return new Choice(options, input.error("celebration"));
  }

  private List<MassChoices.NotPermitted> notPermitted() {
    return Arrays.stream(MassKind.values())
        .filter(kind -> !isPermittedBySomeLeave(kind))
        .map(
            kind -> {
              Permission permission = rulings.apply(kind.id(), Leave.NONE).permission();
              return new MassChoices.NotPermitted(
                  MassKindWords.of(kind),
                  NormWords.of(permission.said()),
                  NormWords.source(permission.source()));
            })
        .toList();
  }

  private boolean isPermittedBySomeLeave(MassKind kind) {
    return Arrays.stream(Leave.values()).anyMatch(leave -> isPermitted(kind, leave));
  }

  /** A second Mass on Holy Thursday is the bishop's to allow, so the form asks for his leave. */
  private boolean isPermittedByLeaveAlone(MassKind kind) {
    return !isPermitted(kind, Leave.NONE) && isPermittedBySomeLeave(kind);
  }

  private boolean isPermitted(MassKind kind, Leave leave) {
    return rulings.apply(kind.id(), leave).permission().verdict() != Verdict.NOT_PERMITTED;
  }
}
