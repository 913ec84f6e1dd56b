package vestiary.retention;

/** What is kept for a time only. */
enum Keeping {
  HISTORY(
      "history",
      "The history of changes",
      30,
      1096,
      "Three years: the Sundays come round in three, and a question about one is then answered"),
  SESSIONS(
      "sessions",
      "Sessions that have ended",
      1,
      30,
      "A month: long enough to ask who was signed in where"),
  TRIES(
      "tries",
      "Sign-ins that failed",
      1,
      7,
      "A week: long enough to see that somebody is trying passwords"),
  ASKINGS(
      "askings",
      "Who was asked to carry what, and the answer",
      30,
      366,
      "A year: whoever plans a feast looks at how it was done the last time"),
  CONTACTS(
      "contacts",
      "Mail addresses of people who serve no more",
      30,
      366,
      "A year without a Mass or a journey with that name"),
  ABSENCES(
      "absences",
      "Who was away when, and why",
      1,
      90,
      "A quarter: long enough to see who stood in for whom");

  /** Ten years; what must be kept longer is no matter of this program. */
  static final int LONGEST = 3660;

  private final String field;
  private final String words;
  private final int least;
  private final int usual;
  private final String reason;

  Keeping(String field, String words, int least, int usual, String reason) {
    this.field = field;
    this.words = words;
    this.least = least;
    this.usual = usual;
    this.reason = reason;
  }

  String field() {
    return field;
  }

  String words() {
    return words;
  }

  /** Days, as the database bounds them. */
  int least() {
    return least;
  }

  int most() {
    return switch (this) {
      case SESSIONS -> 366;
      case TRIES -> 90;
      default -> LONGEST;
    };
  }

  /** Days of a cluster that has chosen nothing. */
  int usual() {
    return usual;
  }

  /** Why so long, without a full stop (common practice, no source). */
  String reason() {
    return reason;
  }
}
