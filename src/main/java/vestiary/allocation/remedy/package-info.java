/**
 * What mends a shortage: every change that touches it is tried by planning again, and what helps is
 * ranked by the trouble it makes. Start reading at {@link vestiary.allocation.remedy.Remedies}.
 */
package vestiary.allocation.remedy;
