package twostrides.exits;

import java.util.Locale;

/** Which says who was on the ice where a sheet says it twice. */
public enum ManpowerSource {
  /** The manpower columns of the row; penalties only where a row has none. */
  COLUMNS,
  /** The penalty rows; the columns only in a game without any. */
  PENALTIES;

  /** The word on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
