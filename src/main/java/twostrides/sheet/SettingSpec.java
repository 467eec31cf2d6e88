package twostrides.sheet;

import java.util.Set;

/**
 * A setting that a sheet map may give, in a TOML table: {@code direction} in {@code [clock]}.
 *
 * @param table the TOML table
 * @param key the key in that table
 * @param kind what kind of value it takes
 * @param allowed the words it may take; empty means any; only for {@link Kind#TEXT}
 * @param least smallest number that it may be or hold; only for numbers
 * @param most largest number that it may be or hold; only for numbers
 * @param meaning what it says, in one line, for messages and help
 */
public record SettingSpec(
    String table,
    String key,
    Kind kind,
    Set<String> allowed,
    double least,
    double most,
    String meaning) {

  /** The kinds of value that a setting can take. */
  public enum Kind {
    /** Words in quotes. */
    TEXT("words in quotes"),
    /** A number, whole or with a decimal point, written without quotes. */
    NUMBER("a number without quotes"),
    /** A form of dates in quotes. */
    DATE_FORM("a form of dates in quotes, such as \"dd.MM.yyyy\" or \"d MMM yyyy\""),
    /** A list of whole numbers. */
    WHOLE_NUMBERS("a list of whole numbers in square brackets"),
    /** Yes or no. */
    FLAG("true or false, without quotes");

    private final String expects;

    Kind(String expects) {
      this.expects = expects;
    }

    /** What a map has to write, for messages. */
    String expects() {
      return expects;
    }
  }

  /** Checks that words are allowed only where words are taken, and copies the set. */
  public SettingSpec {
    allowed = Set.copyOf(allowed);
    if (kind != Kind.TEXT && !allowed.isEmpty()) {
      throw new IllegalArgumentException("only a text setting lists words: " + table + "." + key);
    }
  }

  /** A setting that is no number, or any. */
  public SettingSpec(String table, String key, Kind kind, Set<String> allowed, String meaning) {
    this(table, key, kind, allowed, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, meaning);
  }

  /** A number between two others, which it may be itself. */
  public static SettingSpec number(
      String table, String key, double least, double most, String meaning) {
    return new SettingSpec(table, key, Kind.NUMBER, Set.of(), least, most, meaning);
  }

  /** The name that messages use, {@code clock.direction}. */
  String fullName() {
    return table + "." + key;
  }
}
