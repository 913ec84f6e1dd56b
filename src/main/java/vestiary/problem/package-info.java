/**
 * What we refuse and how it is told: as a problem document (RFC 9457) to programs, as a page to
 * people.
 */
package vestiary.problem;
