/**
 * Who may come in: users with their passwords, sessions and tokens. What they may then do is {@link
 * vestiary.access.Action}'s matter. Start at {@link vestiary.users.SignIn}; the door asks {@link
 * vestiary.users.KnownVisitors}.
 */
package vestiary.users;
