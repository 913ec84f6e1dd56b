package vestiary.mail;

/** What a mail server said when it was handed a mail. */
public sealed interface Handed {

  /** It has it. */
  record Taken() implements Handed {}

  /** It does not take it for this address, and will not another time. */
  record Refused(String answer) implements Handed {}

  /** It could not be reached, or asks for patience. */
  record NotNow(String answer) implements Handed {}
}
