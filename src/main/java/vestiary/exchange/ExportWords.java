package vestiary.exchange;

import static vestiary.web.Speech.say;

import vestiary.web.Speech;

/** How pages speak of lists that are taken out. */
final class ExportWords {

  private ExportWords() {}

  /** For example "24 lines". */
  static String count(int lines) {
    return lines == 0 ? say("nothing in it yet") : Speech.count(lines, "line");
  }

  /** What a list cannot say and the file therefore lacks, in a sentence; empty if nothing. */
  static String leftOut(ImportWhat what) {
    return switch (what) {
      case CLUSTER, CHURCHES, PROPERS, PATTERNS -> "";
      case JOURNEYS -> say("Estimated journeys are left out; they are estimated anew.");
      case PEOPLE -> say("People who were removed for good are left out.");
      case MASSES ->
          say(
              "Those entered or changed by hand; the others follow from the Mass times. A cancelled Mass is told by the one that took its place, or not at all.");
      case ABSENCES -> say("Whole days alone; what has an hour is left out.");
      case PIECES -> say("Those in use and your own; what is borrowed or withdrawn is left out.");
      case CARE -> say("What is not over, in whole days.");
      case OUT -> say("What is not back, in whole days; what went at an hour is left out.");
    };
  }
}
