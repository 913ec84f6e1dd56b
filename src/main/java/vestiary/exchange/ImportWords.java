package vestiary.exchange;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.ArrayList;
import java.util.List;
import vestiary.calendar.Term;
import vestiary.web.Speech;

/** How pages say which lists there are and what came of one. */
final class ImportWords {

  /** What the form calls an iCalendar file. */
  static final String CALENDAR = "calendar";

  private ImportWords() {}

  /** That of a list or a calendar. */
  static String title(String what) {
    return Term.find(ImportWhat.class, what)
        .map(ImportWords::name)
        .orElseGet(() -> say("A Mass calendar (iCalendar)"));
  }

  /** For example "Mass times". */
  static String name(ImportWhat what) {
    return switch (what) {
      case CLUSTER -> say("The cluster");
      case CHURCHES -> say("Churches");
      case PROPERS -> say("Days of your own");
      case JOURNEYS -> say("Journeys");
      case PEOPLE -> say("People");
      case PATTERNS -> say("Mass times");
      case MASSES -> say("Masses");
      case ABSENCES -> say("Who is away");
      case PIECES -> say("Vestments");
      case CARE -> say("Care");
      case OUT -> say("What is out");
    };
  }

  /** What one line of it is, in a sentence or two. */
  static String about(ImportWhat what) {
    return switch (what) {
      case CLUSTER -> say("One line: the cluster’s settings.");
      case CHURCHES -> say("One line a church.");
      case PROPERS ->
          say("One line a day that your diocese, town or church keeps beside the calendar.");
      case JOURNEYS -> say("One line for two churches and the minutes between them.");
      case PEOPLE -> say("One line a priest, deacon, bishop or lay minister.");
      case PATTERNS -> say("One line a Mass that comes back week by week.");
      case MASSES -> say("One line a Mass or other liturgy on one date.");
      case ABSENCES -> say("One line a time in which a person is not available.");
      case PIECES -> say("One line a piece.");
      case CARE -> say("One line a time in which a piece or a set cannot be used.");
      case OUT -> say("One line a piece or a set that is out and not back.");
    };
  }

  static String sentence(ImportResult outcome, boolean isTrial, boolean isDone) {
    int bad = badLines(outcome);
    if (bad > 0) {
      return lead(isTrial)
          + say(
              bad == 1 ? word("%s is not understood.") : word("%s are not understood."),
              Speech.count(bad, "line"));
    }
    if (outcome.lines() == 0) {
      return lead(isTrial) + say("below its first line the list is empty.");
    }
    String good = Speech.count(outcome.lines(), "line");
    return isDone
        ? say(
            outcome.lines() == 1 ? word("%s was brought in.") : word("%s were brought in."),
            Speech.sentence(good))
        : lead(isTrial) + say("%s can be brought in.", good);
  }

  private static String lead(boolean isTrial) {
    return isTrial ? say("Tried, nothing changed yet: ") : say("Nothing was brought in: ");
  }

  /** The same of a calendar, whose events are left out where they cannot be understood. */
  static String calendarSentence(ImportResult outcome, boolean isTrial, boolean isDone) {
    int coming = outcome.lines() - outcome.unchanged();
    String masses = Speech.count(coming, "Mass");
    return isDone
        ? say(
            coming == 1
                ? word("%s was brought in or changed.")
                : word("%s were brought in or changed."),
            Speech.sentence(masses))
        : lead(isTrial) + say("%s can be brought in or changed.", masses);
  }

  /** What is left to say of a calendar, counted. */
  static List<String> calendarCounts(ImportResult outcome) {
    List<String> counts = new ArrayList<>();
    if (outcome.unchanged() > 0) {
      counts.add(say("%s as brought in before", Speech.count(outcome.unchanged(), "Mass")));
    }
    if (!outcome.bad().isEmpty()) {
      counts.add(say("%s left out", Speech.count(badLines(outcome), "event")));
    }
    return counts;
  }

  /** What is left to say, counted; empty if the sentence has said it all. */
  static List<String> counts(ImportResult outcome) {
    List<String> counts = new ArrayList<>();
    if (!outcome.bad().isEmpty() && outcome.lines() > 0) {
      counts.add(say("%s understood", Speech.count(outcome.lines(), "line")));
    }
    if (outcome.unchanged() > 0) {
      counts.add(
          say(
              outcome.unchanged() == 1 ? word("%s says nothing new") : word("%s say nothing new"),
              Speech.count(outcome.unchanged(), "line")));
    }
    if (!outcome.unknownColumns().isEmpty()) {
      counts.add(say("columns not used: %s", Speech.list(outcome.unknownColumns())));
    }
    return counts;
  }

  private static int badLines(ImportResult outcome) {
    return (int) outcome.bad().stream().mapToInt(BadLine::line).distinct().count();
  }
}
