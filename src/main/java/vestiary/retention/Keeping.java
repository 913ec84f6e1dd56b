package vestiary.retention;

import vestiary.web.Speech;

/** What is kept for a time only. */
enum Keeping {
  HISTORY(
      "history",
      Speech.word("The history of changes"),
      30,
      1096,
      Speech.word(
          "Three years: the Sundays come round in three, and a question about one is then answered")),
  SESSIONS(
      "sessions",
      Speech.word("Sessions that have ended"),
      1,
      30,
      Speech.word("A month: long enough to ask who was signed in where")),
  TRIES(
      "tries",
      Speech.word("Sign-ins that failed"),
      1,
      7,
      Speech.word("A week: long enough to see that somebody is trying passwords")),
  ASKINGS(
      "askings",
      Speech.word("Who was asked to carry what, and the answer"),
      30,
      366,
      Speech.word("A year: whoever plans a feast looks at how it was done the last time")),
  CONTACTS(
      "contacts",
      Speech.word("Mail addresses of people who serve no more"),
      30,
      366,
      Speech.word("A year without a Mass or a journey with that name")),
  ABSENCES(
      "absences",
      Speech.word("Who was away when, and why"),
      1,
      90,
      Speech.word("A quarter: long enough to see who stood in for whom"));

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
    return Speech.say(words);
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
    return Speech.say(reason);
  }
}
