/**
 * What mends a clash: offered with its cost, applied by one press in one transaction, undone by
 * another. Asks the core for remedies, tries each out on the span as it is loaded, words it, and
 * keeps what was applied with what was before. Start at {@link vestiary.remedy.OfferRemedies} and
 * {@link vestiary.remedy.ApplyRemedy}.
 */
package vestiary.remedy;
