package vestiary.calendar;

/** Short ways to write a permission down. */
final class Permissions {

  private Permissions() {}

  static Permission permitted(String sentence, String source) {
    return new Permission(Verdict.PERMITTED, sentence, source);
  }

  static Permission withLeave(String sentence, String source) {
    return new Permission(Verdict.WITH_LEAVE, sentence, source);
  }

  static Permission refused(String sentence, String source) {
    return new Permission(Verdict.NOT_PERMITTED, sentence, source);
  }

  static Permission noMassOn(Day day) {
    return refused(
        "No Mass is said on " + day.kept().name().inSentence() + ".",
        "Roman Missal, Good Friday 1; Paschale solemnitatis 59, 75");
  }
}
