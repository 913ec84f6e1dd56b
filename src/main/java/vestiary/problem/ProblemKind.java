package vestiary.problem;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.List;
import vestiary.calendar.Term;

/**
 * The kinds of refusal, each with a page of its own that a problem document's {@code type} leads
 * to. The written form is the last part of that address.
 */
public enum ProblemKind implements Term {
  UNFIT_FIELD(
      word("Something in it cannot be used"),
      word("A field is missing, cannot be read, or says what cannot be. Nothing was changed."),
      word(
          "Look for the sentence beside each field; it repeats what stood there and says what may stand there."),
      word("Put it right and send it again. What you typed is still in the form.")),
  AGAINST_RULE(
      word("A rule stands against it"),
      word(
          "What was asked for is written well, but a rule forbids it. The sentence names the rule and where it comes from. Nothing was changed."),
      word("Choose something that the rule allows."),
      word("If the rule is one of your cluster's own policies, it can be changed under Settings.")),
  BAD_LINES(
      word("Lines that cannot be brought in"),
      word(
          "A list has lines that are not understood. One bad line keeps the whole list out, so that nothing is half brought in."),
      word(
          "Put right the lines that are named; each is given with its number in the file, its column and the reason."),
      word("Try the list without bringing it in until no line is named any more.")),
  NOT_THERE(
      word("Not there"),
      word(
          "The address names something that is not there: it was removed, was given another name, or the address is mistyped."),
      word("Look for it in its list.")),
  TAKEN(
      word("Already taken"),
      word(
          "Somebody or something else has it already: a code, a short name, or a piece at that time. Nothing was changed."),
      word("Choose another, or change what has it now first.")),
  OUTDATED(
      word("Changed meanwhile"),
      word(
          "Somebody else changed the same thing after you had opened it. Nothing of yours was saved, so that their change is not lost."),
      word(
          "Note what you typed, open the thing again from its list, and look at the other change before you enter yours.")),
  SIGN_IN_FIRST(
      word("Sign in first"),
      word(
          "Only people of the cluster may do this, and the server does not know who asks. Nothing was changed."),
      word("Sign in, then do it again; going back in the browser brings back what you typed."),
      word("A program sends a token: Authorization: Bearer, then the token.")),
  NOT_ALLOWED(
      word("Not allowed to you"),
      word("Your role in the cluster does not let you do this. Nothing was changed."),
      word("Ask whoever keeps the users of your cluster.")),
  STALE_FORM(
      word("The form is too old"),
      word(
          "The form was opened before you signed in or out, or comes from another site. Nothing was changed."),
      word(
          "Open the page again and send its form from there; what you typed you may have to type again.")),
  TOO_OFTEN(
      word("Too often"),
      word("There were too many tries in a short time. Nothing was changed."),
      word("Wait as long as the page says, then try again.")),
  DATABASE_AWAY(
      word("The database does not answer"),
      word(
          "Nothing can be read or saved for the moment. Nothing was changed, and nothing is lost. Wait a minute and try again."),
      word("If it lasts, whoever keeps the server should look whether PostgreSQL runs.")),
  TOO_LARGE(
      word("Too large"),
      word(
          "What was sent is larger than the server takes at once. Nothing of it was read, and nothing was changed."),
      word(
          "Divide the list into smaller files, each with the line that names the columns, and send them one after another.")),
  UNREADABLE_REQUEST(
      word("The request cannot be read"),
      word("What arrived at the server cannot be read as it stands. Nothing was changed."),
      word("Go back to the page, and send its form again.")),
  FAULT(
      word("A mistake of ours"),
      word("The server came upon something that should not have happened. Nothing was changed."),
      word(
          "Try again; if it comes back, tell whoever keeps the server the reference that the page gives."));

  private final String title;
  private final String meaning;
  private final List<String> next;

  ProblemKind(String title, String meaning, String... next) {
    this.title = title;
    this.meaning = meaning;
    this.next = List.of(next);
  }

  /** A few words, without a full stop. */
  public String title() {
    return say(title);
  }

  /** What has happened when a request is refused so. */
  public String meaning() {
    return say(meaning);
  }

  /** What to do, one sentence each, 1 or more. */
  public List<String> next() {
    return next.stream().map(one -> say(one)).toList();
  }

  /** Path of the page that explains it. */
  public String address() {
    return "/problems/" + id();
  }
}
