package vestiary.users;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * What somebody keeps for themselves: password, mail address, sessions, tokens.
 *
 * @param about role and churches in words
 * @param made a token just made, to be copied now; empty otherwise
 * @param feeds the addresses that a key just made opens, to be copied now; none otherwise
 * @param origin of the server, by which alone the keys of devices are good
 * @param passkeys the first added first
 * @param sessions how many are open, in words
 */
record AccountView(
    Frame frame,
    String done,
    String problem,
    String name,
    String login,
    String about,
    Field old,
    Field password,
    Field again,
    String sessions,
    String origin,
    List<Passkey> passkeys,
    Mail mail,
    Outside outside,
    String made,
    List<Feed> feeds,
    List<Token> tokens,
    Field tokenName,
    Field tokenDays,
    Field feedName) {

  AccountView {
    passkeys = List.copyOf(passkeys);
    tokens = List.copyOf(tokens);
    feeds = List.copyOf(feeds);
  }

  /**
   * One calendar that a key opens.
   *
   * @param address the whole of it, the key included
   */
  record Feed(String about, String address) {

    /**
     * The same as it opens the calendar program of the device, which then asks anew by itself
     * (common practice, no source); a browser would take the one by https in once and for all.
     */
    public String opening() {
      return address.replaceFirst("^https?:", "webcal:");
    }
  }

  /**
   * A device that lets its user in.
   *
   * @param about when it was added, and last used
   * @param removal where the press is sent that takes it away
   */
  record Passkey(String name, String about, String removal) {}

  /**
   * Another service to sign in by.
   *
   * @param name what people call it; empty if none is named
   */
  record Outside(String name, boolean linked, Field password) {}

  /**
   * Where a link is sent when the password is forgotten.
   *
   * @param offered whether a mail server is named, without which nothing can be sent
   * @param kept whether there is an address to forget
   * @param asksPassword whether there is a password that must be given along
   */
  record Mail(
      boolean offered,
      String sentence,
      boolean kept,
      Field address,
      boolean asksPassword,
      Field password) {}

  /**
   * @param about what it may, until when, and when it was last used
   * @param end where the press is sent that ends it
   */
  record Token(String name, String about, String end) {}
}
