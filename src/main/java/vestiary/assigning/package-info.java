/**
 * Who celebrates where: by hand with advice, or proposed for a week or a month. It asks the core
 * ({@code allocation.celebrant}) and names celebrants through the schedule alone. Start reading at
 * {@link vestiary.assigning.ProposeCelebrants}.
 */
package vestiary.assigning;
