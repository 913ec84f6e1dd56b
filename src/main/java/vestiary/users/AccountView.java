package vestiary.users;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * What somebody keeps for themselves: password, sessions, tokens.
 *
 * @param about role and churches in words
 * @param made a token just made, to be copied now; empty otherwise
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
    String made,
    List<Token> tokens,
    Field tokenName,
    Field tokenDays) {

  AccountView {
    tokens = List.copyOf(tokens);
  }

  /**
   * @param about what it may, until when, and when it was last used
   * @param end where the press is sent that ends it
   */
  record Token(String name, String about, String end) {}
}
