package vestiary.problem;

/** Ends a use case that will not be carried out; the transaction is rolled back. */
public final class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Refusal refusal;

  public Refused(Refusal refusal) {
    super(refusal.detail());
    this.refusal = refusal;
  }

  public Refusal refusal() {
    return refusal;
  }
}
