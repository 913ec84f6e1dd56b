package vestiary.planning;

import vestiary.vesting.Step;

/** Lawful substitutes in a few words, as people say who wears what. */
public final class StepWords {

  private StepWords() {}

  /** Completes "Father Wexcombe …", for example "in alb and stole". */
  public static String worn(Step step) {
    return switch (step) {
      case VIOLET_FOR_ROSE -> "in violet";
      case STOLE_OVER_ALB -> "in alb and stole";
      case WHITE_CHASUBLE -> "in a white chasuble";
      case DALMATIC_LEFT_OUT -> "in alb and stole, without a dalmatic";
      case OTHER_DRESS -> "in other approved dress";
      case SURPLICE_FOR_ALB -> "in a surplice";
      case ALB_ALONE -> "in an alb without amice or cincture";
      case CHASUBLE_FOR_COPE -> "in the chasuble, without a cope";
      case COPE_LEFT_OUT -> "without a cope";
      case RED_VEIL -> "with a red humeral veil";
      case WHITE_DALMATIC -> "in a white dalmatic";
      case CHASUBLE_ALONE -> "in the chasuble, without a dalmatic beneath";
      case VIMPA_LEFT_OUT -> "without a vimpa";
      case PALL_LEFT_OUT -> "without a pall";
    };
  }
}
