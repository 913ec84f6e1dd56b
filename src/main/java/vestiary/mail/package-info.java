/**
 * Letters on their way: kept in the transaction of what they tell, handed to the mail server that
 * is named, tried again while it is away. Whoever writes a letter words it. Start at {@link
 * vestiary.mail.Outbox} and {@link vestiary.mail.Postman}.
 */
package vestiary.mail;
