package vestiary.planning;

import static vestiary.web.Speech.say;

import vestiary.vesting.Step;

/** Lawful substitutes in a few words, as people say who wears what. */
public final class StepWords {

  private StepWords() {}

  /** Completes "Father Wexcombe …", for example "in alb and stole". */
  public static String worn(Step step) {
    return switch (step) {
      case VIOLET_FOR_ROSE -> say("in violet");
      case STOLE_OVER_ALB -> say("in alb and stole");
      case WHITE_CHASUBLE -> say("in a white chasuble");
      case DALMATIC_LEFT_OUT -> say("in alb and stole, without a dalmatic");
      case OTHER_DRESS -> say("in other approved dress");
      case SURPLICE_FOR_ALB -> say("in a surplice");
      case ALB_ALONE -> say("in an alb without amice or cincture");
      case CHASUBLE_FOR_COPE -> say("in the chasuble, without a cope");
      case COPE_LEFT_OUT -> say("without a cope");
      case RED_VEIL -> say("with a red humeral veil");
      case WHITE_DALMATIC -> say("in a white dalmatic");
      case CHASUBLE_ALONE -> say("in the chasuble, without a dalmatic beneath");
      case VIMPA_LEFT_OUT -> say("without a vimpa");
      case PALL_LEFT_OUT -> say("without a pall");
    };
  }
}
