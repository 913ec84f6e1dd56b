package vestiary.problem;

import static vestiary.web.Speech.say;

import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Everything that the server refuses to do. A refusal is no fault: it tells the user what is wrong
 * and what to do.
 *
 * <p>Source: RFC 9457, Problem Details for HTTP APIs. {@code type} is a path on this server.
 */
public sealed interface Refusal {

  /** HTTP status code. */
  int status();

  /** What kind of refusal it is; the same for every occurrence. */
  ProblemKind kind();

  /** A few words that stay the same for every occurrence. */
  default String title() {
    return kind().title();
  }

  /** One or more sentences about this occurrence. */
  String detail();

  /** What is wrong field by field; empty where no field can be named. */
  default List<FieldFault> faults() {
    return List.of();
  }

  /** How long to wait before it is worth trying again; empty where waiting alone does not help. */
  default Optional<Duration> findPause() {
    return Optional.empty();
  }

  /** The record's own members of the problem document, in order. */
  default Map<String, Object> members() {
    return faults().isEmpty() ? Map.of() : Map.of("faults", faults());
  }

  /** Fields that are missing, cannot be read, or say what cannot be. */
  record Unfit(List<FieldFault> faults) implements Refusal {
    public Unfit {
      faults = List.copyOf(faults);
      if (faults.isEmpty()) {
        throw new IllegalArgumentException("a refusal names at least one fault");
      }
    }

    /** A refusal for one field alone. */
    public static Unfit of(String field, String sentence) {
      return new Unfit(List.of(new FieldFault(field, sentence)));
    }

    @Override
    public int status() {
      return 400;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.UNFIT_FIELD;
    }

    @Override
    public String detail() {
      return faults.stream().map(FieldFault::sentence).collect(Collectors.joining(" "));
    }
  }

  /** Well formed, and against a rule; the sentence names the rule and its source. */
  record AgainstRule(String field, String sentence) implements Refusal {
    @Override
    public int status() {
      return 422;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.AGAINST_RULE;
    }

    @Override
    public String detail() {
      return say(sentence);
    }

    @Override
    public List<FieldFault> faults() {
      return List.of(new FieldFault(field, detail()));
    }
  }

  /**
   * A list with lines that cannot be brought in; none of it was.
   *
   * @param members what is wrong line by line, as the problem document shows it
   */
  record BadLines(String detail, Map<String, Object> members) implements Refusal {
    public BadLines {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    @Override
    public int status() {
      return 422;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.BAD_LINES;
    }
  }

  /** The address names something that is not there. */
  record NotThere(String what, String id) implements Refusal {
    @Override
    public int status() {
      return 404;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.NOT_THERE;
    }

    @Override
    public String detail() {
      return switch (what) {
        case "clash" ->
            say(
                "This stands in the way no more: it was mended, or its Masses or vestments were changed since.");
        case "day", "week" ->
            say("\"%s\" is no day that the calendar knows; it is written as in 2026-12-08.", id);
        default ->
            say("There is no %s \"%s\". It may have been removed or renamed.", say(what), id);
      };
    }
  }

  /** Farther than what is known reaches; the sentence says how far that is. */
  record Beyond(String sentence) implements Refusal {
    @Override
    public int status() {
      return 404;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.NOT_THERE;
    }

    @Override
    public String detail() {
      return say(sentence);
    }
  }

  /** Somebody or something else has it already. */
  record Taken(String field, String sentence) implements Refusal {
    @Override
    public int status() {
      return 409;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.TAKEN;
    }

    @Override
    public String detail() {
      return say(sentence);
    }

    @Override
    public List<FieldFault> faults() {
      return field.isEmpty() ? List.of() : List.of(new FieldFault(field, detail()));
    }
  }

  /**
   * Somebody else has it; told is who, for what, until when, and what can be had instead.
   *
   * @param members the same for programs
   */
  record HeldByAnother(String detail, Map<String, Object> members) implements Refusal {
    public HeldByAnother {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    @Override
    public int status() {
      return 409;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.TAKEN;
    }
  }

  /** It was changed since the user looked at it. */
  record Outdated(String what) implements Refusal {
    @Override
    public int status() {
      return 409;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.OUTDATED;
    }

    @Override
    public String detail() {
      return say(
          "Somebody changed %s while you were at it. Open it again, look at the change, and enter yours anew.",
          say(what));
    }
  }

  /** Nobody is known to ask, and somebody must be; the sentence says how to be known. */
  record SignInFirst(String sentence) implements Refusal {
    @Override
    public int status() {
      return 401;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.SIGN_IN_FIRST;
    }

    @Override
    public String detail() {
      return say(sentence);
    }
  }

  /** Whoever asks is known and may not. */
  record NotAllowed(String sentence) implements Refusal {
    @Override
    public int status() {
      return 403;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.NOT_ALLOWED;
    }

    @Override
    public String detail() {
      return say(sentence);
    }
  }

  /** A form that was not given to the present session, or not by us. */
  record StaleForm() implements Refusal {
    @Override
    public int status() {
      return 403;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.STALE_FORM;
    }

    @Override
    public String detail() {
      return say(
          "This form was opened before you signed in or out, or on another site. Open the page again and send it from there; nothing was changed.");
    }
  }

  /**
   * More tries than a person needs.
   *
   * @param pause how long until the next is looked at
   */
  record TooOften(Duration pause) implements Refusal {
    @Override
    public int status() {
      return 429;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.TOO_OFTEN;
    }

    @Override
    public String detail() {
      long minutes = Math.max(1, (pause.toSeconds() + 59) / 60);
      return say(
          "There were too many tries. The next is looked at in %s.",
          minutes == 1 ? say("a minute") : say("%d minutes", minutes));
    }

    @Override
    public Optional<Duration> findPause() {
      return Optional.of(pause);
    }
  }

  /**
   * More requests in a short time than a person makes.
   *
   * @param pause how long until the next is answered
   */
  record TooFast(Duration pause) implements Refusal {
    @Override
    public int status() {
      return 429;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.TOO_OFTEN;
    }

    @Override
    public String detail() {
      long seconds = Math.max(1, pause.toSeconds());
      return say(
          "More was asked in a minute than one person asks. Wait %s and ask again; nothing was changed.",
          seconds == 1 ? say("a second") : say("%d seconds", seconds));
    }

    @Override
    public Optional<Duration> findPause() {
      return Optional.of(pause);
    }
  }

  /** The database does not answer; it is tried again with the next request. */
  record DatabaseAway() implements Refusal {
    @Override
    public int status() {
      return 503;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.DATABASE_AWAY;
    }

    @Override
    public String detail() {
      return say(
          "Nothing can be read or saved for the moment, and nothing was changed. Wait a minute and try again.");
    }
  }

  /**
   * More than the server takes in one request; it is refused before it is read.
   *
   * @param limit in bytes
   */
  record TooLarge(long limit) implements Refusal {
    private static final long MEGABYTE = 1L << 20;

    @Override
    public int status() {
      return 413;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.TOO_LARGE;
    }

    @Override
    public String detail() {
      return say(
          "What was sent is larger than %d MB, which is the most. Divide a list into smaller files, take a photograph at a smaller size; nothing was changed.",
          limit / MEGABYTE);
    }
  }

  /** A request that the server cannot read at all; the sentence says why. */
  record Unreadable(int status, String title, String detail) implements Refusal {
    @Override
    public ProblemKind kind() {
      return ProblemKind.UNREADABLE_REQUEST;
    }
  }

  /** Our own mistake; the reference stands in the log beside its cause. */
  record Fault(String reference) implements Refusal {
    @Override
    public int status() {
      return 500;
    }

    @Override
    public ProblemKind kind() {
      return ProblemKind.FAULT;
    }

    @Override
    public String detail() {
      return say(
          "This should not have happened, and nothing was changed. If you report it, give the reference %s.",
          reference);
    }
  }
}
