package twostrides.starter;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The clock of a sheet: which way it counts, and how long periods seem.
 *
 * @param falls rows in which it falls from the row before
 * @param rises rows in which it rises
 * @param longest its largest reading, s
 */
record Clock(int falls, int rises, double longest) {
  private static final double MINUTE = 60;

  /** A period is seldom without an event in its first or last minute. Assumed. */
  private static final double SLACK = 60;

  private static final int[] USUAL_MINUTES = {20, 15, 17, 12, 18, 25};

  static Clock of(UnknownSheet sheet, Found found) {
    int falls = 0;
    int rises = 0;
    double longest = 0;
    Map<String, Double> last = new HashMap<>();
    for (List<String> row : sheet.rows()) {
      String written = found.cell(Found.CLOCK, row);
      if (written.isEmpty()) {
        continue;
      }
      double now = seconds(written);
      longest = Math.max(longest, now);
      Double before = last.put(found.game(row) + "|" + found.cell(Found.PERIOD, row), now);
      falls += before != null && now < before ? 1 : 0;
      rises += before != null && now > before ? 1 : 0;
    }
    return new Clock(falls, rises, longest);
  }

  private static double seconds(String written) {
    int colon = written.indexOf(':');
    double rest = Column.number(written.substring(colon + 1));
    return colon < 0 ? rest : MINUTE * Integer.parseInt(written.substring(0, colon)) + rest;
  }

  boolean down() {
    return falls >= rises;
  }

  /** Whether nine rows in ten agree. */
  boolean sure() {
    return Math.max(falls, rises) >= 9 * Math.min(falls, rises) && falls + rises > 0;
  }

  /** Seconds of a period: a usual length of which the clock shows the last minute; 0 for none. */
  int period() {
    for (int minutes : USUAL_MINUTES) {
      if (longest <= minutes * MINUTE && longest > minutes * MINUTE - SLACK) {
        return (int) (minutes * MINUTE);
      }
    }
    return 0;
  }
}
