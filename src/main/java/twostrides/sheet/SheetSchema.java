package twostrides.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What one kind of sheet holds: its columns, and the settings that a map of such a sheet may give.
 *
 * @param name the word that a map gives for it, {@code sheet = "play"}
 * @param columns the columns, in the order in which messages list them
 * @param settings the settings
 */
public record SheetSchema(String name, List<ColumnSpec> columns, List<SettingSpec> settings) {
  /** Tables and keys of a map that belong to this package and cannot be settings. */
  static final Set<String> RESERVED = Set.of("sheet", "file", "columns", "values", "rules");

  /** Checks that nothing is declared twice and copies the lists. */
  public SheetSchema {
    columns = List.copyOf(columns);
    settings = List.copyOf(settings);
    Set<String> seen = new HashSet<>();
    for (ColumnSpec column : columns) {
      if (!seen.add(column.name())) {
        throw new IllegalArgumentException("column declared twice: " + column.name());
      }
    }
    for (SettingSpec setting : settings) {
      if (RESERVED.contains(setting.table()) || !seen.add("setting " + setting.fullName())) {
        throw new IllegalArgumentException("setting declared twice, or reserved: " + setting);
      }
    }
  }

  /**
   * The column of this name, if declared.
   *
   * @param columnName our name
   */
  public Optional<ColumnSpec> column(String columnName) {
    return columns.stream().filter(c -> c.name().equals(columnName)).findFirst();
  }

  /** Our column names, in declared order. */
  public List<String> columnNames() {
    return columns.stream().map(ColumnSpec::name).toList();
  }

  /**
   * The setting of this table and key, if declared.
   *
   * @param table the TOML table
   * @param key the key in it
   */
  Optional<SettingSpec> setting(String table, String key) {
    return settings.stream()
        .filter(s -> s.table().equals(table) && s.key().equals(key))
        .findFirst();
  }
}
