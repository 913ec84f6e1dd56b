package vestiary.calendar;

import java.util.List;

/** Puts permission and colours of one Mass together. */
final class MassRulings {

  private final ChurchCalendar church;
  private final MassColours colours;

  MassRulings(ChurchCalendar church) {
    this.church = church;
    this.colours = new MassColours(church.norms().whiteForTheDead());
  }

  /**
   * @param date the day of the Mass by the clock
   * @param day the day the Mass belongs to
   */
  MassRuling of(MassRequest request, Day date, Day day) {
    Permission permission = MassPermissions.of(request, date, date);
    return new MassRuling(day, request.kind(), options(request, day, permission), permission);
  }

  /**
   * A ritual Mass on an evening that is already Sunday's: the Sunday says whether it may be; if
   * not, the Sunday's Mass is taken. Source: UNLY 3; Order of Celebrating Matrimony 32, 34.
   */
  MassRuling onAnEve(MassRequest request, Day date, Day tomorrow) {
    Permission permission = MassPermissions.of(request, date, tomorrow);
    boolean refused = permission.verdict() == Verdict.NOT_PERMITTED;
    boolean isOfTheSunday = refused || request.kind() == MassKind.SCRUTINY;
    Day day = isOfTheSunday ? tomorrow : date;
    return new MassRuling(day, request.kind(), options(request, day, permission), permission);
  }

  private List<MassOption> options(MassRequest request, Day day, Permission permission) {
    boolean refused = permission.verdict() == Verdict.NOT_PERMITTED;
    return switch (request.kind()) {
      case OF_THE_DAY, ANTICIPATED -> ofTheDay(day);
      case CHRISM -> refused ? ofTheDay(day) : own(SeparateMasses.CHRISM, request);
      case LORDS_SUPPER -> refused ? ofTheDay(day) : own(SeparateMasses.LORDS_SUPPER, request);
      case EASTER_VIGIL -> refused ? ofTheDay(day) : own(SeparateMasses.EASTER_VIGIL, request);
      default -> refused ? List.of(ofTheDay(day).get(0)) : List.of(beside(request, day));
    };
  }

  /**
   * The celebrations a Mass of the day may take; Masses of their own hour are asked for by kind.
   */
  private static List<MassOption> ofTheDay(Day day) {
    List<Celebration> celebrations =
        MassTimes.isHolyThursday(day) ? List.of(day.kept()) : day.celebrations();
    return celebrations.stream()
        .map(c -> new MassOption(c, c.colours(), cited(c.colourReason()), c.source()))
        .toList();
  }

  private static Sentence cited(Reason reason) {
    return new Sentence("%s", List.of(new Sentence.Cited(reason, true)));
  }

  private static List<MassOption> own(Celebration mass, MassRequest request) {
    return List.of(option(mass, mass.colours(), request.kind()));
  }

  private MassOption beside(MassRequest request, Day day) {
    return option(day.kept(), colours(request, day), request.kind());
  }

  private List<Colour> colours(MassRequest request, Day day) {
    String votiveOf = request.votiveOf();
    return switch (request.kind()) {
      case VOTIVE -> colours.ofVotive(votiveOf, church.find(votiveOf).map(Entry::celebration), day);
      case VARIOUS_NEEDS -> colours.ofNeeds(votiveOf, day);
      default -> colours.of(request.kind(), day, MassPermissions.row(day));
    };
  }

  private static MassOption option(Celebration celebration, List<Colour> colours, MassKind kind) {
    return new MassOption(
        celebration, colours, MassColourReasons.sentence(kind), MassColourReasons.source(kind));
  }
}
