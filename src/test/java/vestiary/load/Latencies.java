package vestiary.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How long requests took, by kind, and which were not answered as they should be. */
final class Latencies {

  private final Map<String, List<Long>> nanos = new TreeMap<>();
  private final List<String> errors = new ArrayList<>();

  synchronized void note(String kind, long tookNanos) {
    nanos.computeIfAbsent(kind, k -> new ArrayList<>()).add(tookNanos);
  }

  synchronized void error(String what) {
    errors.add(what);
  }

  synchronized List<String> errors() {
    return List.copyOf(errors);
  }

  /** A Markdown table, one line a kind and one for all. */
  synchronized String table() {
    StringBuilder table =
        new StringBuilder("| what | requests | half within | 95 in 100 | 99 in 100 | highest |\n");
    table.append("|---|---|---|---|---|---|\n");
    nanos.forEach((kind, took) -> table.append(line(kind, took)));
    table.append(line("**all**", nanos.values().stream().flatMap(List::stream).toList()));
    return table.toString();
  }

  private static String line(String kind, List<Long> took) {
    long[] sorted = took.stream().mapToLong(Long::longValue).toArray();
    Arrays.sort(sorted);
    return "| %s | %d | %.0f ms | %.0f ms | %.0f ms | %.0f ms |%n"
        .formatted(
            kind,
            sorted.length,
            at(sorted, 0.50),
            at(sorted, 0.95),
            at(sorted, 0.99),
            at(sorted, 1.00));
  }

  private static double at(long[] sorted, double share) {
    int place = (int) Math.ceil(share * sorted.length) - 1;
    return sorted.length == 0 ? 0 : sorted[Math.max(0, place)] / 1e6;
  }
}
