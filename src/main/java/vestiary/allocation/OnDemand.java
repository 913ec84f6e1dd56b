package vestiary.allocation;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A list that is written down when somebody first looks at it: each of many findings accounts for
 * every piece of its colour in the cluster, and few are looked at.
 */
final class OnDemand<E> extends AbstractList<E> {

  private Supplier<List<E>> source;
  private List<E> written;

  OnDemand(Supplier<List<E>> source) {
    this.source = source;
  }

  /** The list itself if it is one of these, else a copy that nobody can change. */
  static <E> List<E> orCopyOf(List<E> list) {
    return list instanceof OnDemand ? list : List.copyOf(list);
  }

  @Override
  public E get(int index) {
    return written().get(index);
  }

  @Override
  public int size() {
    return written().size();
  }

  private synchronized List<E> written() {
    if (written == null) {
      written = List.copyOf(source.get());
      source = null;
    }
    return written;
  }
}
