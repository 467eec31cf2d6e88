package twostrides.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.exits.Settings;

/**
 * One row of a table as a test writes it, by column name; a cell that is not set, or is empty, is
 * missing.
 *
 * @param cells the cells
 */
record Cells(Map<String, Object> cells) {

  /** Every column of every table: a name that is none of them is a slip of the test. */
  private static final Set<String> COLUMNS =
      new Season(
              List.of(),
              List.of(),
              List.of(),
              new CarryRates(List.of()),
              Costs.of(List.of()),
              Settings.DEFAULT)
          .tables().stream()
              .flatMap(t -> t.get().columnNames().stream())
              .collect(Collectors.toUnmodifiableSet());

  /** A row from column and value in turn; a later value of a column replaces an earlier one. */
  static Cells of(Object... turns) {
    Map<String, Object> cells = new LinkedHashMap<>();
    for (int i = 0; i < turns.length; i += 2) {
      if (!COLUMNS.contains((String) turns[i])) {
        throw new IllegalArgumentException("no table has a column " + turns[i]);
      }
      cells.put((String) turns[i], turns[i + 1]);
    }
    return new Cells(cells);
  }

  /** The row with cells of another one in place of its own. */
  Cells with(Cells other) {
    Map<String, Object> all = new LinkedHashMap<>(cells);
    all.putAll(other.cells);
    return new Cells(all);
  }

  private Optional<Object> value(String column) {
    return Optional.ofNullable(cells.get(column)).filter(v -> !v.equals(""));
  }

  boolean has(String column) {
    return value(column).isPresent();
  }

  Optional<String> text(String column) {
    return value(column).map(String.class::cast);
  }

  String needed(String column) {
    return text(column).orElseThrow(() -> new IllegalArgumentException("no " + column));
  }

  OptionalDouble number(String column) {
    return value(column)
        .map(v -> OptionalDouble.of(((Number) v).doubleValue()))
        .orElse(OptionalDouble.empty());
  }

  OptionalInt count(String column) {
    return value(column).map(v -> OptionalInt.of((Integer) v)).orElse(OptionalInt.empty());
  }

  Optional<Boolean> flag(String column) {
    return value(column).map(Boolean.class::cast);
  }

  /** The constant of an enum whose word in tables stands in a column. */
  <E extends Enum<E>> Optional<E> one(String column, Class<E> of, Function<E, String> word) {
    return text(column)
        .map(
            w ->
                Stream.of(of.getEnumConstants())
                    .filter(e -> word.apply(e).equals(w))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no " + column + " " + w)));
  }

  /** Whether both rows have a value in a column, and the same. */
  boolean same(String column, Cells other) {
    return has(column) && value(column).equals(other.value(column));
  }

  /** Whether two rows are of one release: of one number in a game, else of one line. */
  boolean ofOneRelease(Cells other) {
    boolean numbered = has(Columns.RELEASE) && other.has(Columns.RELEASE);
    return same(Columns.GAME, other) && same(numbered ? Columns.RELEASE : Columns.LINE, other);
  }

  /** Values of a column in rows, each once, in their order. */
  static List<String> distinct(String column, List<Cells> rows) {
    List<String> values = new ArrayList<>();
    rows.forEach(r -> r.text(column).filter(v -> !values.contains(v)).ifPresent(values::add));
    return values;
  }
}
