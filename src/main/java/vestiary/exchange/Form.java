package vestiary.exchange;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** How a name that other lines refer to must be written. */
enum Form {
  /** Of a church. */
  SLUG(
      "[a-z0-9]+(-[a-z0-9]+)*",
      40,
      word("Write small letters, digits and single hyphens, at most 40 characters.")),
  /** Of a person, a celebration or a calendar. */
  KEY(
      "[a-z0-9]+(-[a-z0-9]+)*",
      60,
      word("Write small letters, digits and single hyphens, at most 60 characters.")),
  /** Of a church that must be there. */
  CHURCH(
      SLUG,
      word(
          "Write the short name of a church that the cluster has, for example ht; bring a new church in first.")),
  /** Of a person who must be there. */
  PERSON(
      KEY,
      word(
          "Write the key of somebody whom the cluster has, for example ambrose-tarnwick; bring new people in first.")),
  /** Of a celebration that a church bears as its title. */
  TITULAR(
      KEY,
      word(
          "Write the id of a celebration that the calendar has, for example trinity-sunday; or leave it empty, and choose the day of the title on the page of the church.")),
  /** Of a piece or a set. */
  CODE(
      "[A-Z0-9]+(-[A-Z0-9]+)*",
      40,
      word("Write letters without accents, digits and single hyphens, at most 40 characters."));

  private final Pattern pattern;
  private final int longest;
  private final String wanted;

  Form(String pattern, int longest, String wanted) {
    this.pattern = Pattern.compile(pattern);
    this.longest = longest;
    this.wanted = wanted;
  }

  Form(Form same, String wanted) {
    this.pattern = same.pattern;
    this.longest = same.longest;
    this.wanted = wanted;
  }

  /** The name in the letter case of this form, or empty if it cannot be written so. */
  Optional<String> find(String text) {
    return Optional.of(this == CODE ? text.toUpperCase(Locale.ROOT) : text.toLowerCase(Locale.ROOT))
        .filter(name -> name.length() <= longest && pattern.matcher(name).matches());
  }

  /** What may stand there, as a sentence. */
  String wanted() {
    return say(wanted);
  }
}
