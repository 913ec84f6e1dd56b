package vestiary.exchange;

/** A file that cannot be read as the list it should be; nothing of it is used. */
final class BadFile extends Exception {

  private static final long serialVersionUID = 1;

  private final transient BadLine fault;

  BadFile(int line, String reason) {
    super(reason);
    this.fault = new BadLine(line, "", reason);
  }

  BadLine fault() {
    return fault;
  }
}
