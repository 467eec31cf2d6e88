package twostrides.starter;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Which columns of an unknown sheet are which of ours: found by name, and only where the content
 * can be that.
 *
 * @param columns by our names
 * @param manpower a column such as 5 on 4, where there is one
 */
record Found(Map<String, Column> columns, Optional<Column> manpower) {
  static final String CLOCK = "clock";
  static final String PERIOD = "period";
  static final String TEAM = "team";
  static final String HOME = "home";
  static final String AWAY = "away";
  static final String X = "x_m";
  static final String TO_X = "to_x_m";
  static final String DATE = "date";

  private static final Pattern CLOCKS =
      Pattern.compile("\\d{1,3}:[0-5]\\d([.,]\\d+)?|\\d+([.,]\\d+)?");
  private static final Pattern DATES = Pattern.compile(".*\\d.*[-/. ].*\\d.*");
  private static final Pattern SIDES = Pattern.compile("(?i)home|away");
  static final Pattern MANPOWER = Pattern.compile("(\\d)\\s*(?:on|v|vs|x|-)\\s*(\\d)");

  /** What a tag sheet cannot say. */
  private static final Set<String> PLAY_ONLY =
      Set.of(
          "venue",
          "other_player",
          TO_X,
          "to_y_m",
          Zones.TO_ZONE,
          "skaters_home",
          "skaters_away",
          "skaters_for",
          "skaters_against",
          "net_home_empty",
          "net_away_empty");

  private static final int MOST_PERIODS = 20;
  private static final int MOST_TEAMS = 80;
  private static final double LONGEST_CLOCK = 7200;

  static Found in(UnknownSheet sheet) {
    Map<String, Column> found = new HashMap<>();
    Set<Column> taken = new HashSet<>();
    List<Patterns> names = names(sheet);
    for (Patterns ours : names) {
      String name = ours.keys().get(0);
      sheet.column(name).ifPresent(c -> take(found, taken, name, c));
    }
    for (Patterns ours : names) {
      String name = ours.keys().get(0);
      for (Column c : candidates(sheet, ours)) {
        if (!found.containsKey(name) && !taken.contains(c) && canBe(name, c)) {
          take(found, taken, name, c);
        }
      }
    }
    if (found.containsKey(X)) {
      found.keySet().removeAll(List.of(Zones.ZONE, Zones.TO_ZONE));
    }
    Optional<Column> manpower =
        sheet.columns().stream()
            .filter(c -> !found.containsKey(Tags.WAY_OUT) && !taken.contains(c))
            .filter(c -> c.all(MANPOWER) && c.words().size() > 1)
            .findFirst();
    return new Found(Map.copyOf(found), manpower);
  }

  /** The columns to look for: those of a tag sheet where a column holds ways out. */
  private static List<Patterns> names(UnknownSheet sheet) {
    List<Patterns> play = Patterns.read("columns.txt", 1);
    boolean tags =
        candidates(sheet, Tags.names().get(0)).stream()
            .anyMatch(c -> Tags.waysOut(c, sheet.rows().size()));
    return tags
        ? Stream.concat(
                Tags.names().stream(),
                play.stream().filter(p -> !PLAY_ONLY.contains(p.keys().get(0))))
            .toList()
        : play;
  }

  private static void take(Map<String, Column> found, Set<Column> taken, String name, Column c) {
    found.put(name, c);
    taken.add(c);
  }

  private static List<Column> candidates(UnknownSheet sheet, Patterns ours) {
    List<Column> list = new ArrayList<>();
    for (Pattern p : ours.patterns()) {
      for (Column c : sheet.columns()) {
        if (p.matcher(Column.plain(c.header())).matches()) {
          list.add(c);
        }
      }
    }
    return list;
  }

  private static boolean canBe(String name, Column c) {
    return switch (name) {
      case PERIOD -> c.wholeNumbers(1, MOST_PERIODS);
      case CLOCK -> c.all(CLOCKS) && (!c.numbers() || c.most() <= LONGEST_CLOCK);
      case TEAM, HOME, AWAY, "opponent" -> !c.numbers() && c.words().size() <= MOST_TEAMS;
      case "venue" -> c.all(SIDES);
      case "skaters_home", "skaters_away", "skaters_for", "skaters_against" -> c.wholeNumbers(0, 7);
      case X, "y_m", TO_X, "to_y_m", Tags.END_X, Tags.END_Y, "video_s" -> c.numbers();
      case Zones.ZONE, Zones.TO_ZONE -> Zones.all(c);
      case DATE -> c.all(DATES);
      default -> !c.words().isEmpty();
    };
  }

  /** Whether a row is an exit that somebody tagged. */
  boolean tags() {
    return columns.containsKey(Tags.WAY_OUT);
  }

  Optional<Column> get(String ours) {
    return Optional.ofNullable(columns.get(ours));
  }

  String cell(String ours, List<String> row) {
    Column c = columns.get(ours);
    return c == null ? "" : c.cell(row);
  }

  /** What tells a row's game from others in the sheet. */
  String game(List<String> row) {
    return cell("game", row)
        + "|"
        + cell(DATE, row)
        + "|"
        + cell(HOME, row)
        + "|"
        + cell(AWAY, row);
  }

  /** Whether a column is one of those found. */
  boolean uses(Column column) {
    return columns.containsValue(column) || manpower.equals(Optional.of(column));
  }
}
