package vestiary.backup;

import java.util.List;
import java.util.Objects;

/**
 * What an archive says of itself.
 *
 * @param format version of the archive's form
 * @param schema version of the newest migration when it was made
 * @param cluster id of the cluster
 * @param name of the cluster
 * @param zone IANA name of its time zone
 * @param made date in that zone
 * @param entries what it holds, in the order in which it is brought in
 */
record Manifest(
    int format,
    String schema,
    String cluster,
    String name,
    String zone,
    String made,
    List<Entry> entries) {

  /** The form that this program writes, and the newest that it reads. */
  static final int FORMAT = 1;

  static final String FILE = "backup.json";

  Manifest {
    Objects.requireNonNull(schema);
    Objects.requireNonNull(cluster);
    Objects.requireNonNull(name);
    entries = List.copyOf(entries);
  }

  /**
   * One table.
   *
   * @param rows how many lines
   * @param sha256 in hexadecimal digits, of the lines as they are
   */
  record Entry(String table, long rows, String sha256) {

    Entry {
      Objects.requireNonNull(table);
      Objects.requireNonNull(sha256);
    }

    /** Where it lies in the archive. */
    String file() {
      return "tables/" + table + ".jsonl";
    }
  }
}
