package vestiary.allocation.flow;

import java.util.List;

/**
 * Items of one class that are free at one place from one time on.
 *
 * @param after what they come from, where they lie before everything included
 * @param items in order of code, one or more
 */
record Supply(Visit after, List<Item> items) {

  Supply {
    items = List.copyOf(items);
  }

  int size() {
    return items.size();
  }
}
