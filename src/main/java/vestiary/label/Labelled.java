package vestiary.label;

import java.util.List;

/**
 * What a label says.
 *
 * @param code of the set or piece
 * @param address that its QR code holds
 * @param words what it is, its set's name, its church; the most needed first
 */
record Labelled(String code, String address, List<String> words) {
  Labelled {
    words = List.copyOf(words);
  }
}
