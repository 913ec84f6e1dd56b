package vestiary.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;

/** Comes into the demo as one of its people, by the one press that this takes. */
final class Enter {

  private Enter() {}

  /** As its administrator; the page stands at that address then. */
  static void demo(Page page, PackagedServer server, String path) {
    page.navigate(server.address("/sign-in?back=" + path));
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Enter as Maren Dovecote"))
        .click();
  }
}
