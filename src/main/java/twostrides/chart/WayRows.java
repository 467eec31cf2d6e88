package twostrides.chart;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import twostrides.findings.Profile;
import twostrides.findings.ShownWay;
import twostrides.findings.WayCount;
import twostrides.game.Strength;
import twostrides.stats.Count;

/**
 * The rows of a way-out chart: a row for every strength at which a way out occurs, and one empty
 * row for a main way out that never does.
 */
final class WayRows {

  /** Shown only where they occur. */
  private static final Set<ShownWay> SELDOM =
      EnumSet.of(ShownWay.CARRY_OTHER, ShownWay.MEANS_UNKNOWN);

  private WayRows() {}

  /**
   * One row of bars.
   *
   * @param way the way out
   * @param strength the strength; empty in the row that says that there were none
   * @param iced icings of the attempts whose ending is known
   * @param attempts all attempts
   * @param first whether it is the first row of its way out
   */
  record Row(ShownWay way, Optional<Strength> strength, Count iced, int attempts, boolean first) {

    /** Attempts whose ending the sheet does not say. */
    int unknownEndings() {
      return attempts - iced.trials();
    }

    /** What stands at the bar's end. */
    String share() {
      if (attempts == 0) {
        return "none";
      }
      return iced.trials() == 0 ? "" + attempts : said(iced);
    }

    /** What stands after the share, in smaller words; often empty. */
    String rest() {
      int unknown = unknownEndings();
      if (unknown == 0) {
        return "";
      }
      return iced.trials() == 0 ? "ending not in the sheet" : "+" + unknown + " unknown";
    }

    /** The name of the strength; empty in the row that says that there were none. */
    String strengthName() {
      return strength.map(s -> s == Strength.UNKNOWN ? "not known" : s.label()).orElse("");
    }
  }

  /**
   * A share in words: "7 of 31 iced (23 %)", or "2 of 6, too few to say".
   *
   * @param iced with one trial at least
   */
  static String said(Count iced) {
    String counts = iced.successes() + " of " + iced.trials();
    return iced.tooFew() ? counts + ", too few to say" : counts + " iced (" + percent(iced) + ")";
  }

  /** Whole percent, but never 0 % for some or 100 % for not all. */
  private static String percent(Count count) {
    long whole = Math.round(100.0 * count.successes() / count.trials());
    if (whole == 0 && count.successes() > 0) {
      return "under 1 %";
    }
    if (whole == 100 && count.successes() < count.trials()) {
      return "over 99 %";
    }
    return whole + " %";
  }

  /** The rows of a profile in the order in which they are shown. */
  static List<Row> of(Profile profile) {
    List<Row> rows = new ArrayList<>();
    for (ShownWay way : ShownWay.values()) {
      Map<Strength, Row> found = new EnumMap<>(Strength.class);
      for (WayCount c : profile.counts()) {
        if (c.way() == way && c.attempts() > 0) {
          found.merge(c.strength(), row(c), WayRows::both);
        }
      }
      List<Row> ofWay = new ArrayList<>(found.values());
      if (ofWay.isEmpty() && !SELDOM.contains(way)) {
        ofWay.add(new Row(way, Optional.empty(), new Count(0, 0), 0, false));
      }
      for (int i = 0; i < ofWay.size(); i++) {
        Row r = ofWay.get(i);
        rows.add(new Row(r.way, r.strength, r.iced, r.attempts, i == 0));
      }
    }
    return List.copyOf(rows);
  }

  private static Row row(WayCount c) {
    return new Row(c.way(), Optional.of(c.strength()), c.iced(), c.attempts(), false);
  }

  private static Row both(Row a, Row b) {
    return new Row(a.way, a.strength, a.iced.plus(b.iced), a.attempts + b.attempts, false);
  }
}
