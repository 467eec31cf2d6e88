package twostrides.season;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;
import tech.tablesaw.selection.Selection;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/**
 * Some rows of one of the season's tables: the questions that every count of the book is made of.
 * Which rows they are is kept as numbers, so that a question copies nothing.
 */
public final class Rows {

  private static final Comparator<List<String>> WORD_BY_WORD =
      (a, b) -> {
        int order = 0;
        for (int i = 0; i < a.size() && order == 0; i++) {
          order = a.get(i).compareTo(b.get(i));
        }
        return order;
      };

  /** A column of words as numbers: each row's, and their words; a missing word is an empty one. */
  private static final class Coded {
    private final int[] codes;
    private final List<String> words;

    Coded(StringColumn column) {
      Map<String, Integer> known = new LinkedHashMap<>();
      codes = new int[column.size()];
      for (int i = 0; i < codes.length; i++) {
        codes[i] = known.computeIfAbsent(column.get(i), w -> known.size());
      }
      words = List.copyOf(known.keySet());
    }
  }

  private final Table all;
  private final Map<String, Coded> coded;
  private final int[] picked;

  /**
   * All rows of a table.
   *
   * @param table the table
   */
  public Rows(Table table) {
    this(table, new ConcurrentHashMap<>(), IntStream.range(0, table.rowCount()).toArray());
  }

  private Rows(Table all, Map<String, Coded> coded, int[] picked) {
    this.all = all;
    this.coded = coded;
    this.picked = picked;
  }

  /**
   * One column of these rows.
   *
   * @param column its name
   */
  public Column<?> column(String column) {
    return all.column(column).subset(picked);
  }

  /**
   * A column of words of these rows.
   *
   * @param column its name
   */
  public StringColumn words(String column) {
    return (StringColumn) column(column);
  }

  /** How many. */
  public int n() {
    return picked.length;
  }

  /** Whether there are none. */
  public boolean isEmpty() {
    return picked.length == 0;
  }

  /** None of the table's rows. */
  public Rows none() {
    return new Rows(all, coded, new int[0]);
  }

  /**
   * Rows of a selection.
   *
   * @param selection which, counted among these
   */
  public Rows where(Selection selection) {
    int[] at = selection.toArray();
    return new Rows(all, coded, Arrays.stream(at).map(i -> picked[i]).toArray());
  }

  private Rows keep(IntPredicate row) {
    int[] kept = new int[picked.length];
    int n = 0;
    for (int i : picked) {
      if (row.test(i)) {
        kept[n++] = i;
      }
    }
    return new Rows(all, coded, Arrays.copyOf(kept, n));
  }

  private Coded coded(String column) {
    return coded.computeIfAbsent(column, c -> new Coded(all.stringColumn(c)));
  }

  private Rows keep(String column, Predicate<String> word) {
    Coded of = coded(column);
    boolean[] fits = new boolean[of.words.size()];
    for (int i = 0; i < fits.length; i++) {
      fits[i] = word.test(of.words.get(i));
    }
    return keep(i -> fits[of.codes[i]]);
  }

  /**
   * Rows with one of some words in a column.
   *
   * @param column a column of words
   * @param words the words
   */
  public Rows where(String column, String... words) {
    return keep(column, Set.of(words)::contains);
  }

  /**
   * Rows with none of some words in a column; a missing word is none of them.
   *
   * @param column a column of words
   * @param words the words
   */
  public Rows without(String column, String... words) {
    Set<String> left = Set.of(words);
    return keep(column, w -> !left.contains(w));
  }

  /** Rows that are true in a column of flags. */
  public Rows isTrue(String column) {
    return is(column, 1);
  }

  /** Rows that are false in a column of flags. */
  public Rows isFalse(String column) {
    return is(column, 0);
  }

  private Rows is(String column, int flag) {
    BooleanColumn flags = all.booleanColumn(column);
    return keep(i -> flags.getByte(i) == flag);
  }

  /** Rows in which a column has a value. */
  public Rows known(String column) {
    Column<?> values = all.column(column);
    return values instanceof StringColumn
        ? keep(column, w -> !w.isEmpty())
        : keep(i -> !values.isMissing(i));
  }

  /** Rows with an icing, written or inferred, as their cause. */
  public Rows iced() {
    return keep(Columns.RESTART_CAUSE, w -> w.startsWith("icing"));
  }

  /** Sum of a column of counts. */
  public int sum(String column) {
    IntColumn counts = all.intColumn(column);
    long sum = 0;
    for (int i : picked) {
      sum += counts.isMissing(i) ? 0 : counts.getInt(i);
    }
    return (int) sum;
  }

  /**
   * So many of these rows.
   *
   * @param part some of them
   */
  public Count share(Rows part) {
    return new Count(part.n(), n());
  }

  /**
   * Groups by the words of some columns, sorted by them; a missing word is an empty one.
   *
   * @param columns columns of words
   */
  public SortedMap<List<String>, Rows> by(String... columns) {
    List<Coded> of = Stream.of(columns).map(this::coded).toList();
    int[] group = new int[picked.length];
    int groups = Math.min(1, picked.length);
    for (Coded c : of) {
      Map<Long, Integer> known = new HashMap<>();
      for (int i = 0; i < picked.length; i++) {
        long key = (long) group[i] * c.words.size() + c.codes[picked[i]];
        group[i] = known.computeIfAbsent(key, k -> known.size());
      }
      groups = known.size();
    }
    int[] sizes = new int[groups];
    for (int g : group) {
      sizes[g]++;
    }
    int[][] members = new int[groups][];
    Arrays.setAll(members, g -> new int[sizes[g]]);
    for (int i = picked.length - 1; i >= 0; i--) {
      members[group[i]][--sizes[group[i]]] = picked[i];
    }
    SortedMap<List<String>, Rows> sorted = new TreeMap<>(WORD_BY_WORD);
    for (int[] rows : members) {
      sorted.put(
          of.stream().map(c -> c.words.get(c.codes[rows[0]])).toList(), new Rows(all, coded, rows));
    }
    return sorted;
  }

  /**
   * A count of each team and game, so that an interval can allow for games that differ.
   *
   * @param count counts some rows
   */
  public Clustered byGame(Function<Rows, Count> count) {
    return new Clustered(by(Columns.TEAM, Columns.GAME).values().stream().map(count).toList());
  }
}
