package vestiary.allocation.solver;

import java.util.Arrays;
import java.util.BitSet;

/**
 * A linear program whose columns are whole numbers: each column and each row has a least and a
 * greatest value, and each row is a sum of columns with whole coefficients. It grows as it is
 * written; columns and rows are named by their place.
 */
public final class Program {

  /** Stands for no bound. */
  public static final long UNBOUNDED = 1L << 40;

  private long[] columnLeast = new long[64];
  private long[] columnMost = new long[64];
  private long[] rowLeast = new long[64];
  private long[] rowMost = new long[64];
  private int[] entryRow = new int[256];
  private int[] entryColumn = new int[256];
  private int[] entryCoefficient = new int[256];
  private final BitSet switches = new BitSet();
  private int columns;
  private int rows;
  private int entries;

  /** A new column and its place. */
  public int column(long least, long most) {
    columnLeast = grown(columnLeast, columns);
    columnMost = grown(columnMost, columns);
    columnLeast[columns] = least;
    columnMost[columns] = most;
    return columns++;
  }

  /**
   * A new column that is off, 0, or on, 1, and by being on only ever allows more: whatever has a
   * solution with some switches on has one with more of them on.
   */
  public int switchColumn() {
    int column = column(0, 1);
    switches.set(column);
    return column;
  }

  /** The columns that are switches. */
  BitSet switches() {
    return (BitSet) switches.clone();
  }

  /** A new row, a sum of nothing as yet, and its place. */
  public int row(long least, long most) {
    rowLeast = grown(rowLeast, rows);
    rowMost = grown(rowMost, rows);
    rowLeast[rows] = least;
    rowMost[rows] = most;
    return rows++;
  }

  /** Adds a column to a row in which it does not stand yet. */
  public void put(int row, int column, int coefficient) {
    if (entries == entryRow.length) {
      entryRow = Arrays.copyOf(entryRow, 2 * entries);
      entryColumn = Arrays.copyOf(entryColumn, 2 * entries);
      entryCoefficient = Arrays.copyOf(entryCoefficient, 2 * entries);
    }
    entryRow[entries] = row;
    entryColumn[entries] = column;
    entryCoefficient[entries++] = coefficient;
  }

  /** Changes the bounds of a row. */
  public void bound(int row, long least, long most) {
    rowLeast[row] = least;
    rowMost[row] = most;
  }

  /** Changes the bounds of a column. */
  public void boundColumn(int column, long least, long most) {
    columnLeast[column] = least;
    columnMost[column] = most;
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return rows;
  }

  long columnLeast(int column) {
    return columnLeast[column];
  }

  /** The greatest value a column may take. */
  public long columnMost(int column) {
    return columnMost[column];
  }

  long rowLeast(int row) {
    return rowLeast[row];
  }

  long rowMost(int row) {
    return rowMost[row];
  }

  /** Whether whole values keep every bound. */
  public boolean admits(long[] values) {
    long[] sums = new long[rows];
    for (int entry = 0; entry < entries; entry++) {
      sums[entryRow[entry]] += entryCoefficient[entry] * values[entryColumn[entry]];
    }
    boolean within = true;
    for (int column = 0; within && column < columns; column++) {
      within = columnLeast[column] <= values[column] && values[column] <= columnMost[column];
    }
    for (int row = 0; within && row < rows; row++) {
      within = rowLeast[row] <= sums[row] && sums[row] <= rowMost[row];
    }
    return within;
  }

  /** The same program, to be changed without changing this one. */
  public Program copy() {
    Program copy = new Program();
    copy.columnLeast = columnLeast.clone();
    copy.columnMost = columnMost.clone();
    copy.rowLeast = rowLeast.clone();
    copy.rowMost = rowMost.clone();
    copy.entryRow = entryRow.clone();
    copy.entryColumn = entryColumn.clone();
    copy.entryCoefficient = entryCoefficient.clone();
    copy.switches.or(switches);
    copy.columns = columns;
    copy.rows = rows;
    copy.entries = entries;
    return copy;
  }

  /** Adds the row that a weighted sum of columns is at most so much. */
  public void limit(long[] costs, long most) {
    int row = row(-UNBOUNDED, most);
    for (int column = 0; column < costs.length; column++) {
      if (costs[column] != 0) {
        put(row, column, (int) costs[column]);
      }
    }
  }

  /** Adds the row that at least one of some columns is not 0. */
  void requireAny(BitSet some) {
    int row = row(1, UNBOUNDED);
    some.stream().forEach(column -> put(row, column, 1));
  }

  /** All rows, each with its entries together. */
  Entries entries() {
    int[] first = new int[rows + 1];
    for (int entry = 0; entry < entries; entry++) {
      first[entryRow[entry] + 1]++;
    }
    for (int row = 0; row < rows; row++) {
      first[row + 1] += first[row];
    }
    int[] next = first.clone();
    int[] column = new int[entries];
    int[] coefficient = new int[entries];
    for (int entry = 0; entry < entries; entry++) {
      int place = next[entryRow[entry]]++;
      column[place] = entryColumn[entry];
      coefficient[place] = entryCoefficient[entry];
    }
    return new Entries(first, column, coefficient);
  }

  /** Entries of row r stand from first[r] to before first[r + 1]. */
  record Entries(int[] first, int[] column, int[] coefficient) {}

  private static long[] grown(long[] array, int used) {
    return used == array.length ? Arrays.copyOf(array, 2 * used) : array;
  }
}
