package vestiary.exchange;

import static vestiary.web.Speech.say;

import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** A file that cannot be read as the list it should be; nothing of it is used. */
class BadFile extends Exception {

  private static final long serialVersionUID = 1;

  private final transient BadLine fault;

  BadFile(int line, String reason) {
    super(reason);
    this.fault = new BadLine(line, "", reason);
  }

  BadLine fault() {
    return fault;
  }

  /** The same as the answer to whoever sent it. */
  Refused refused() {
    String where = fault.line() > 1 ? say("Line %,d: ", fault.line()) : "";
    return new Refused(Refusal.Unfit.of("file", where + getMessage()));
  }
}
