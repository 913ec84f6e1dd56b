/**
 * Who may come in, and how: users with their passwords, devices, mail addresses, sessions and
 * tokens. What they may then do is {@link vestiary.access.Action}'s matter. Start at {@link
 * vestiary.users.SignIn}; the door asks {@link vestiary.users.KnownVisitors}.
 */
package vestiary.users;
