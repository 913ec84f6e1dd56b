package vestiary.exchange;

import java.util.ArrayList;
import java.util.List;
import vestiary.calendar.Term;
import vestiary.web.English;

/** How pages say which lists there are and what came of one. */
final class ImportWords {

  /** What the form calls an iCalendar file. */
  static final String CALENDAR = "calendar";

  private ImportWords() {}

  /** That of a list or a calendar. */
  static String title(String what) {
    return Term.find(ImportWhat.class, what)
        .map(ImportWords::name)
        .orElse("A Mass calendar (iCalendar)");
  }

  /** For example "Mass times". */
  static String name(ImportWhat what) {
    return switch (what) {
      case CLUSTER -> "The cluster";
      case CHURCHES -> "Churches";
      case PROPERS -> "Days of your own";
      case JOURNEYS -> "Journeys";
      case PEOPLE -> "People";
      case PATTERNS -> "Mass times";
      case MASSES -> "Masses";
      case ABSENCES -> "Who is away";
      case PIECES -> "Vestments";
      case CARE -> "Care";
      case OUT -> "What is out";
    };
  }

  /** What one line of it is, in a sentence or two. */
  static String about(ImportWhat what) {
    return switch (what) {
      case CLUSTER -> "One line: the cluster’s settings.";
      case CHURCHES -> "One line a church.";
      case PROPERS -> "One line a day that your diocese, town or church keeps beside the calendar.";
      case JOURNEYS -> "One line for two churches and the minutes between them.";
      case PEOPLE -> "One line a priest, deacon, bishop or lay minister.";
      case PATTERNS -> "One line a Mass that comes back week by week.";
      case MASSES -> "One line a Mass or other liturgy on one date.";
      case ABSENCES -> "One line a time in which a person is not available.";
      case PIECES -> "One line a piece.";
      case CARE -> "One line a time in which a piece or a set cannot be used.";
      case OUT -> "One line a piece or a set that is out and not back.";
    };
  }

  static String sentence(ImportResult outcome, boolean isTrial, boolean isDone) {
    String lead = isTrial ? "Tried, nothing changed yet: " : "Nothing was brought in: ";
    int bad = badLines(outcome);
    if (bad > 0) {
      return lead + "%s %s not understood.".formatted(English.count(bad, "line"), isOrAre(bad));
    }
    if (outcome.lines() == 0) {
      return lead + "below its first line the list is empty.";
    }
    String good = English.count(outcome.lines(), "line");
    return isDone
        ? "%s brought in."
            .formatted(English.sentence(good) + (outcome.lines() == 1 ? " was" : " were"))
        : lead + good + " can be brought in.";
  }

  /** The same of a calendar, whose events are left out where they cannot be understood. */
  static String calendarSentence(ImportResult outcome, boolean isTrial, boolean isDone) {
    int coming = outcome.lines() - outcome.unchanged();
    String masses = English.count(coming, "Mass");
    if (isDone) {
      return "%s brought in or changed."
          .formatted(English.sentence(masses) + (coming == 1 ? " was" : " were"));
    }
    return (isTrial ? "Tried, nothing changed yet: " : "Nothing was brought in: ")
        + masses
        + " can be brought in or changed.";
  }

  /** What is left to say of a calendar, counted. */
  static List<String> calendarCounts(ImportResult outcome) {
    List<String> counts = new ArrayList<>();
    if (outcome.unchanged() > 0) {
      counts.add("%s as brought in before".formatted(English.count(outcome.unchanged(), "Mass")));
    }
    if (!outcome.bad().isEmpty()) {
      counts.add(English.count(badLines(outcome), "event") + " left out");
    }
    return counts;
  }

  /** What is left to say, counted; empty if the sentence has said it all. */
  static List<String> counts(ImportResult outcome) {
    List<String> counts = new ArrayList<>();
    if (!outcome.bad().isEmpty() && outcome.lines() > 0) {
      counts.add(English.count(outcome.lines(), "line") + " understood");
    }
    if (outcome.unchanged() > 0) {
      counts.add(
          "%s %s nothing new"
              .formatted(
                  English.count(outcome.unchanged(), "line"),
                  outcome.unchanged() == 1 ? "says" : "say"));
    }
    if (!outcome.unknownColumns().isEmpty()) {
      counts.add("columns not used: " + English.list(outcome.unknownColumns()));
    }
    return counts;
  }

  private static int badLines(ImportResult outcome) {
    return (int) outcome.bad().stream().mapToInt(BadLine::line).distinct().count();
  }

  private static String isOrAre(int count) {
    return count == 1 ? "is" : "are";
  }
}
