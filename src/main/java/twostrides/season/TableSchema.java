package twostrides.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * One kind of record as a table, described once: each column's name, type, unit or words, meaning,
 * and how to read it from the record. The same description makes the Tablesaw table, the file in
 * the book's {@code data} folder and the part of docs/tables.md.
 *
 * @param <R> the record
 */
public final class TableSchema<R> {

  /** What a column holds. A missing value is missing, never zero. */
  public enum Type {
    TEXT,
    COUNT,
    NUMBER,
    FLAG
  }

  /**
   * A column.
   *
   * @param name name
   * @param type what it holds
   * @param words its unit, or the words that occur; empty for plain text and counts
   * @param meaning what it is
   * @param read appends the value of a record
   */
  record Described<R>(String name, Type type, String words, String meaning, Appender<R> read) {}

  /** Appends a record's value to its column. */
  interface Appender<R> {
    void append(R from, Column<?> to);
  }

  static {
    // Two threads that meet the library's kinds of columns first would wait for each other for
    // ever: each kind's class begins with the list of all, and the list with each kind.
    ColumnType.values();
  }

  private final String name;
  private final String rows;
  private final List<Described<R>> columns = new ArrayList<>();

  /**
   * A table without columns.
   *
   * @param name name of the table and its file
   * @param rows what a row is
   */
  TableSchema(String name, String rows) {
    this.name = name;
    this.rows = rows;
  }

  /** Name of the table and its file. */
  public String name() {
    return name;
  }

  TableSchema<R> text(String column, String words, String meaning, Function<R, String> read) {
    return optText(column, words, meaning, r -> Optional.of(read.apply(r)));
  }

  TableSchema<R> optText(
      String column, String words, String meaning, Function<R, Optional<String>> read) {
    return add(
        column,
        Type.TEXT,
        words,
        meaning,
        (r, to) -> read.apply(r).ifPresentOrElse(((StringColumn) to)::append, to::appendMissing));
  }

  TableSchema<R> count(String column, String meaning, ToIntFunction<R> read) {
    return optCount(column, meaning, r -> OptionalInt.of(read.applyAsInt(r)));
  }

  TableSchema<R> optCount(String column, String meaning, Function<R, OptionalInt> read) {
    return add(
        column,
        Type.COUNT,
        "",
        meaning,
        (r, to) -> read.apply(r).ifPresentOrElse(((IntColumn) to)::append, to::appendMissing));
  }

  TableSchema<R> number(String column, String unit, String meaning, ToDoubleFunction<R> read) {
    return optNumber(column, unit, meaning, r -> OptionalDouble.of(read.applyAsDouble(r)));
  }

  TableSchema<R> optNumber(
      String column, String unit, String meaning, Function<R, OptionalDouble> read) {
    return add(
        column,
        Type.NUMBER,
        unit,
        meaning,
        (r, to) -> read.apply(r).ifPresentOrElse(((DoubleColumn) to)::append, to::appendMissing));
  }

  TableSchema<R> flag(String column, String meaning, Predicate<R> read) {
    return optFlag(column, meaning, r -> Optional.of(read.test(r)));
  }

  TableSchema<R> optFlag(String column, String meaning, Function<R, Optional<Boolean>> read) {
    return add(
        column,
        Type.FLAG,
        "true, false",
        meaning,
        (r, to) ->
            read.apply(r).ifPresentOrElse(v -> ((BooleanColumn) to).append(v), to::appendMissing));
  }

  /**
   * Columns of a part of the record, described once for all records that have such a part.
   *
   * @param part reads the part
   * @param described its columns
   */
  <P> TableSchema<R> part(Function<R, P> part, Consumer<TableSchema<P>> described) {
    return optPart(r -> Optional.of(part.apply(r)), described);
  }

  /** Columns of a part that some records do not have. */
  <P> TableSchema<R> optPart(Function<R, Optional<P>> part, Consumer<TableSchema<P>> described) {
    TableSchema<P> parts = new TableSchema<>(name, rows);
    described.accept(parts);
    for (Described<P> c : parts.columns) {
      add(
          c.name(),
          c.type(),
          c.words(),
          c.meaning(),
          (r, to) -> part.apply(r).ifPresentOrElse(p -> c.read().append(p, to), to::appendMissing));
    }
    return this;
  }

  private TableSchema<R> add(
      String column, Type type, String words, String meaning, Appender<R> read) {
    if (columns.stream().anyMatch(c -> c.name().equals(column))) {
      throw new IllegalArgumentException("table " + name + " has two columns " + column);
    }
    columns.add(new Described<>(column, type, words, meaning, read));
    return this;
  }

  /**
   * The table of some records, a row each, in their order.
   *
   * @param records the records
   */
  Table table(List<R> records) {
    return Table.create(name, columns.stream().<Column<?>>map(c -> filled(c, records)).toList());
  }

  private static <R> Column<?> filled(Described<R> described, List<R> records) {
    Column<?> column =
        switch (described.type()) {
          case TEXT -> StringColumn.create(described.name());
          case COUNT -> IntColumn.create(described.name());
          case NUMBER -> DoubleColumn.create(described.name());
          case FLAG -> BooleanColumn.create(described.name());
        };
    records.forEach(r -> described.read().append(r, column));
    return column;
  }

  /**
   * A column as docs/schema shows it.
   *
   * @param name name
   * @param type what it holds
   * @param words its unit, or the words that occur; empty for plain text and counts
   * @param meaning what it is
   */
  public record Field(String name, Type type, String words, String meaning) {}

  /** The columns, in their order. */
  public List<Field> fields() {
    return columns.stream()
        .map(c -> new Field(c.name(), c.type(), c.words(), c.meaning()))
        .toList();
  }

  /** What a row is. */
  public String rows() {
    return rows;
  }

  /** The part of docs/tables.md: a heading and a Markdown table with a row a column. */
  public String guide() {
    StringBuilder out = new StringBuilder();
    out.append("## ").append(name).append(".csv: ").append(rows).append("\n\n");
    out.append("| column | unit or words | what it is |\n|---|---|---|\n");
    for (Described<R> c : columns) {
      out.append("| `").append(c.name()).append("` | ");
      out.append(c.words()).append(c.words().isEmpty() ? "| " : " | ");
      out.append(c.meaning()).append(" |\n");
    }
    return out.toString();
  }
}
