package vestiary.users;

import vestiary.web.Frame;

/**
 * Where the link in a mail leads that proves an address.
 *
 * @param address that it proves
 * @param action where the press is sent; empty once it was
 */
record MailProofView(Frame frame, String address, String action) {}
