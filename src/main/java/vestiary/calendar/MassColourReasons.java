package vestiary.calendar;

/** Why a Mass takes its colours, and the norm. */
final class MassColourReasons {

  private MassColourReasons() {}

  static Sentence sentence(MassKind kind) {
    return switch (kind) {
      case FUNERAL, FUNERAL_OUTSIDE_MASS, DEAD_ANNIVERSARY, DEAD ->
          Sentence.of("The colours for the dead, as the bishops' conference allows them.");
      case CONFIRMATION -> Sentence.of("The ritual Mass of confirmation is red or white.");
      case SCRUTINY -> Sentence.of("Violet, the colour of the Masses of the scrutinies.");
      case BAPTISM ->
          Sentence.of("The ritual Mass of baptism is white; on a Sunday the Sunday's colour too.");
      case ANOINTING ->
          Sentence.of("The Mass with anointing is white; on a Sunday the Sunday's colour too.");
      case WEDDING -> Sentence.of("The ritual Mass of marriage is white.");
      case VOTIVE ->
          Sentence.of("The colour that suits the votive Mass, or that of the day or season.");
      case VARIOUS_NEEDS ->
          Sentence.of("The colour of the day or season, and violet where the Mass is penitential.");
      case PROCESSION -> Sentence.of("The colour of the day, or white.");
      case BENEDICTION -> Sentence.of("White, for the Holy Eucharist.");
      case GOOD_FRIDAY -> Sentence.of("Red, for the Passion of the Lord.");
      case CHRISM, LORDS_SUPPER, EASTER_VIGIL ->
          Sentence.of("White, as this Mass has its own colour.");
      case OF_THE_DAY, ANTICIPATED, OTHER -> Sentence.of("The colour of the day.");
      default -> Sentence.of("The ritual Mass is white.");
    };
  }

  static String source(MassKind kind) {
    return switch (kind) {
      case FUNERAL, FUNERAL_OUTSIDE_MASS, DEAD_ANNIVERSARY, DEAD -> "GIRM 346 d, e";
      case WEDDING -> "Order of Celebrating Matrimony 34";
      case ANOINTING -> "Pastoral Care of the Sick 134";
      case VOTIVE, VARIOUS_NEEDS -> "GIRM 347";
      case GOOD_FRIDAY -> "Roman Missal, Good Friday 5";
      case OF_THE_DAY, ANTICIPATED, OTHER -> "GIRM 346";
      case PROCESSION, BENEDICTION -> "common practice";
      default -> "Roman Missal, rubrics of this Mass; GIRM 347";
    };
  }
}
