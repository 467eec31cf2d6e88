package twostrides.exits;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * The columns of one table and their types, and the way to fill it. A cell that is not set in a row
 * is missing.
 *
 * <p>Keeps Tablesaw at arm's length: stages say which columns they write, not how.
 */
final class Shape {

  /** The four kinds of cell the pipeline uses. */
  enum Type {
    TEXT,
    COUNT,
    NUMBER,
    FLAG
  }

  private final String name;
  private final Map<String, Type> columns = new LinkedHashMap<>();

  Shape(String name) {
    this.name = name;
  }

  Shape text(String... names) {
    return add(Type.TEXT, names);
  }

  Shape count(String... names) {
    return add(Type.COUNT, names);
  }

  Shape number(String... names) {
    return add(Type.NUMBER, names);
  }

  Shape flag(String... names) {
    return add(Type.FLAG, names);
  }

  private Shape add(Type type, String... names) {
    for (String n : names) {
      if (columns.put(n, type) != null) {
        throw new IllegalArgumentException("table " + name + " has two columns " + n);
      }
    }
    return this;
  }

  List<String> names() {
    return List.copyOf(columns.keySet());
  }

  Filler filler() {
    return new Filler();
  }

  private static Column<?> empty(String name, Type type) {
    return switch (type) {
      case TEXT -> StringColumn.create(name);
      case COUNT -> IntColumn.create(name);
      case NUMBER -> DoubleColumn.create(name);
      case FLAG -> BooleanColumn.create(name);
    };
  }

  /** One row at a time, then the table. */
  final class Filler {
    private final Map<String, Column<?>> cells = new LinkedHashMap<>();
    private int rows;

    private Filler() {
      columns.forEach((n, t) -> cells.put(n, empty(n, t)));
    }

    /** Starts a row; what the last row left unset becomes missing. */
    Filler row() {
      pad();
      rows++;
      return this;
    }

    Filler text(String column, String value) {
      StringColumn c = (StringColumn) at(column);
      c.append(value);
      return this;
    }

    Filler text(String column, Optional<String> value) {
      return value.map(v -> text(column, v)).orElse(this);
    }

    Filler count(String column, int value) {
      ((IntColumn) at(column)).append(value);
      return this;
    }

    Filler count(String column, OptionalInt value) {
      return value.isPresent() ? count(column, value.getAsInt()) : this;
    }

    Filler number(String column, double value) {
      ((DoubleColumn) at(column)).append(value);
      return this;
    }

    Filler number(String column, OptionalDouble value) {
      return value.isPresent() ? number(column, value.getAsDouble()) : this;
    }

    Filler flag(String column, boolean value) {
      ((BooleanColumn) at(column)).append(value);
      return this;
    }

    Filler flag(String column, Optional<Boolean> value) {
      return value.map(v -> flag(column, v.booleanValue())).orElse(this);
    }

    Table table() {
      pad();
      return Table.create(name, new ArrayList<>(cells.values()));
    }

    private Column<?> at(String column) {
      Column<?> c = cells.get(column);
      if (c == null) {
        throw new IllegalArgumentException("table " + name + " has no column " + column);
      }
      if (c.size() != rows - 1) {
        throw new IllegalStateException(
            "column " + column + " of table " + name + " set twice in a row");
      }
      return c;
    }

    private void pad() {
      for (Column<?> c : cells.values()) {
        if (c.size() < rows) {
          c.appendMissing();
        }
      }
    }
  }
}
