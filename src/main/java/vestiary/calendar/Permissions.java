package vestiary.calendar;

/** Short ways to write a permission down. */
final class Permissions {

  private Permissions() {}

  static Permission permitted(Sentence said, String source) {
    return new Permission(Verdict.PERMITTED, said, source);
  }

  static Permission withLeave(Sentence said, String source) {
    return new Permission(Verdict.WITH_LEAVE, said, source);
  }

  static Permission refused(Sentence said, String source) {
    return new Permission(Verdict.NOT_PERMITTED, said, source);
  }

  static Permission noMassOn(Day day) {
    return refused(
        Sentence.of("No Mass is said on %s.", Sentence.Named.within(day.kept().name())),
        "Roman Missal, Good Friday 1; Paschale solemnitatis 59, 75");
  }
}
