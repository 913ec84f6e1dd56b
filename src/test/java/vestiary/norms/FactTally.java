package vestiary.norms;

import java.util.Map;
import java.util.TreeMap;

/** How many facts held, by publication; prints itself once, when all tables are done. */
final class FactTally implements AutoCloseable {

  private final Map<String, Integer> published = new TreeMap<>();
  private int otherwise;
  private int practice;

  synchronized void add(Source source) {
    if (source.isPublished()) {
      published.merge(source.publication(), 1, Integer::sum);
    } else if (source.isCommonPractice()) {
      practice++;
    } else {
      otherwise++;
    }
  }

  @Override
  public synchronized void close() {
    int total = published.values().stream().mapToInt(Integer::intValue).sum();
    StringBuilder lines = new StringBuilder("Published facts by source:\n");
    published.forEach((source, count) -> lines.append(String.format("%5d  %s%n", count, source)));
    System.out.printf(
        "%sPublished facts checked: %d from %d sources; besides: %d from memory or reckoned,"
            + " %d of common practice%n",
        lines, total, published.size(), otherwise, practice);
  }
}
