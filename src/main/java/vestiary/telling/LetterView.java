package vestiary.telling;

import java.util.List;

/**
 * A letter as it is laid out, as plain text and as HTML.
 *
 * @param language BCP 47
 * @param greeting may be empty
 * @param lead how much there is, in a sentence
 * @param links each a sentence with its address at the end
 * @param stop which letters one gets and how to end them
 */
record LetterView(
    String language,
    String subject,
    String greeting,
    String lead,
    List<Section> sections,
    List<Link> links,
    Link stop) {

  LetterView {
    sections = List.copyOf(sections);
    links = List.copyOf(links);
  }

  /**
   * @param title may be empty
   */
  record Section(String title, List<Item> items) {
    Section {
      items = List.copyOf(items);
    }
  }

  /**
   * @param head for example where and when
   * @param lines whole sentences
   */
  record Item(String head, List<String> lines) {
    Item {
      lines = List.copyOf(lines);
    }
  }

  /**
   * @param before words before the address
   */
  record Link(String before, String address) {}
}
