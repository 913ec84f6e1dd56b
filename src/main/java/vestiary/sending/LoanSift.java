package vestiary.sending;

/**
 * Which loans are looked for.
 *
 * @param open whether those alone that are not back
 * @param parish of the owner or the borrower; empty for all
 */
record LoanSift(boolean open, String parish) {

  boolean lets(Sent one) {
    return (!open || one.isOut())
        && (parish.isBlank()
            || one.owner().equalsIgnoreCase(parish.strip())
            || one.borrower().equalsIgnoreCase(parish.strip()));
  }
}
