/**
 * On which days a Mass recurs, in pure Java: by a rule of RFC 5545 or by the liturgical calendar,
 * within limits that people use (seasons, months, school terms, not in the Triduum). Knows no clock
 * and no rows. Start at {@link vestiary.pattern.MassPattern}.
 */
package vestiary.pattern;
