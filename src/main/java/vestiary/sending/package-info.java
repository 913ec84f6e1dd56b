/**
 * What goes out and comes back: by a scan of its label or by two presses. Between parishes each
 * time is a loan, whose record stands for good; what is overdue is chased. Start at {@link
 * vestiary.sending.SendOut} and {@link vestiary.sending.TakeIn}.
 */
package vestiary.sending;
