/**
 * Removes people for good: what is theirs goes, what was celebrated stays and reads without them.
 * Texts are searched by the database itself (migration V033), past every feature. Start at {@link
 * vestiary.erasure.RemoveForGood}.
 */
package vestiary.erasure;
