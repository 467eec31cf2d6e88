package twostrides.findings;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import twostrides.exits.AtCenter;
import twostrides.exits.WayOut;
import twostrides.game.NetEmpty;
import twostrides.game.Strength;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.stats.Count;

/** The shares that the book counts, of rows of the season's tables. */
public final class Shares {

  private static final String KEPT_IN = WayOut.KEPT_IN.label();

  private Shares() {}

  /** Icings among the exit attempts whose ending the sheet tells. */
  public static Count iced(Rows exits) {
    return new Count(
        after(exits, FaceOffAfter.ICING).n(), exits.known(Columns.OWN_ZONE_RESTART).n());
  }

  /**
   * Icings of exit attempts by way out as it is shown, and by the words of other columns: a row a
   * group that occurs. Its columns: {@code shown_way}; those others; {@code attempts}; {@code
   * icings} of the {@code n} attempts whose ending the sheet tells; {@code share}, 0 to 1, with its
   * 95 % Wilson interval {@code low} to {@code high}, missing where n is too few to say a share.
   * The interval takes attempts as independent; {@link Rows#byGame} allows for games that differ.
   *
   * @param exits exit attempts, a row each
   * @param by columns of words to count apart by, such as {@link Columns#PLAYER}; rows are in the
   *     order of the ways, then of these words
   * @throws IllegalStateException when there is no such column
   */
  public static Table byWay(Rows exits, String... by) {
    StringColumn shown = StringColumn.create("shown_way");
    List<StringColumn> words = Stream.of(by).map(StringColumn::create).toList();
    IntColumn attempts = IntColumn.create(Columns.ATTEMPTS);
    IntColumn icings = IntColumn.create("icings");
    IntColumn n = IntColumn.create("n");
    DoubleColumn share = DoubleColumn.create("share");
    DoubleColumn low = DoubleColumn.create("low");
    DoubleColumn high = DoubleColumn.create("high");
    for (ShownWay way : ShownWay.values()) {
      for (Map.Entry<List<String>, Rows> group : way.in(exits).by(by).entrySet()) {
        Count iced = iced(group.getValue());
        shown.append(way.label());
        for (int i = 0; i < by.length; i++) {
          words.get(i).append(group.getKey().get(i));
        }
        attempts.append(group.getValue().n());
        icings.append(iced.successes());
        n.append(iced.trials());
        if (iced.tooFew()) {
          Stream.of(share, low, high).forEach(DoubleColumn::appendMissing);
        } else {
          share.append(iced.share().orElseThrow());
          low.append(iced.wilson().orElseThrow().low());
          high.append(iced.wilson().orElseThrow().high());
        }
      }
    }
    DecimalFormat threePlaces =
        new DecimalFormat("0.000", DecimalFormatSymbols.getInstance(Locale.ROOT));
    Stream.of(share, low, high).forEach(c -> c.setPrintFormatter(threePlaces, ""));
    return Table.create("icings by way out", shown)
        .addColumns(words.toArray(StringColumn[]::new))
        .addColumns(attempts, icings, n, share, low, high);
  }

  /** Exit attempts that an own-zone face-off of a cause followed. */
  public static Rows after(Rows exits, FaceOffAfter cause) {
    Rows restarted = exits.isTrue(Columns.OWN_ZONE_RESTART);
    return switch (cause) {
      case ICING -> restarted.iced();
      case PENALTY -> restarted.where(Columns.RESTART_CAUSE, "penalty");
      case OTHER -> restarted.where(Columns.RESTART_CAUSE, "other", "unknown", "none");
      case NONE -> exits.isFalse(Columns.OWN_ZONE_RESTART);
    };
  }

  /** Iced ones among releases short of center. */
  public static Count icedReleases(Rows releases) {
    return releases.share(releases.iced());
  }

  /** Exit attempts that left the zone. */
  public static Count cleared(Rows exits) {
    return exits.share(out(exits));
  }

  /** Those that left the zone. */
  static Rows out(Rows exits) {
    return exits.without(Columns.WAY_OUT, KEPT_IN);
  }

  /** Those that did not. */
  static Rows keptIn(Rows exits) {
    return exits.where(Columns.WAY_OUT, KEPT_IN);
  }

  /** Released short of center, among the exits that have a mark at center. */
  public static Count releasedShort(Rows exits) {
    Rows marked = exits.known(Columns.AT_CENTER);
    return marked.share(marked.where(Columns.AT_CENTER, AtCenter.RELEASED_SHORT.label()));
  }

  /** Kept in, among the exit attempts under no or light pressure. */
  static Count keptInUnderLittlePressure(Rows exits) {
    Rows free = exits.where(Columns.PRESSURE, "none", "light");
    return free.share(keptIn(free));
  }

  static Rows shorthanded(Rows rows) {
    return rows.where(Columns.STRENGTH, Strength.SHORTHANDED.label());
  }

  static Rows atEmptyNet(Rows rows) {
    return rows.where(
        Columns.NET_EMPTY,
        Stream.of(NetEmpty.values())
            .filter(NetEmpty::ofOpponent)
            .map(NetEmpty::word)
            .toArray(String[]::new));
  }

  /**
   * Rows of a team.
   *
   * @param rows some rows
   * @param team whose; empty for all teams
   */
  public static Rows team(Rows rows, Optional<String> team) {
    return team.isEmpty() ? rows : rows.where(Columns.TEAM, team.get());
  }

  /** Name of a group's first column. */
  static String first(List<String> key) {
    return key.get(0);
  }
}
