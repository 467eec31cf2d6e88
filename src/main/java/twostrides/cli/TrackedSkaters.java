package twostrides.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import twostrides.book.Format;
import twostrides.exits.Around;
import twostrides.exits.Release;
import twostrides.exits.When;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.tracking.GameOutline;
import twostrides.tracking.GamesNamed;

/**
 * The skaters at the releases of the games that were tracked, and an account of every row and every
 * release asked for.
 */
final class TrackedSkaters implements SkatersAtRelease {

  private record Key(String game, String sheet, long line) {}

  private final boolean given;
  private final Map<Key, ReleaseMatch> matches = new HashMap<>();
  private final Map<Key, DoubtfulRow> setAside = new LinkedHashMap<>();
  private final List<Problem> doubts = new ArrayList<>();
  private final Map<String, Integer> notFound = new TreeMap<>();
  private final SamePlaces places =
      new SamePlaces(
          "tracking reads the player's number",
          "video.frames_per_second, video.first_frame_s and the sync sheet for the seconds, place.view,"
              + " place.unit, place.center_x and place.center_y for the places");
  private int found;
  private int asked;
  private int rowsRead;
  private int rowsUsed;
  private int rowsOfOtherGames;
  private int rowsSetAside;

  /**
   * Nothing tracked yet.
   *
   * @param given whether there are tracking sheets at all
   */
  TrackedSkaters(boolean given) {
    this.given = given;
  }

  /**
   * Counts the rows of a sheet.
   *
   * @param named its games
   * @param games those of which play sheets were read
   */
  void count(GamesNamed named, List<String> games) {
    int rows = named.rows().values().stream().mapToInt(n -> n).sum();
    rowsRead += rows + named.unnamed() + named.broken();
    int known =
        named.rows().entrySet().stream()
            .filter(e -> games.contains(e.getKey()))
            .mapToInt(Map.Entry::getValue)
            .sum();
    rowsOfOtherGames += rows - known + (games.isEmpty() ? named.unnamed() : 0);
    // A broken row is met anew for each game of its sheet, and once where it has none.
    rowsSetAside -= named.broken() * (games.size() - 1);
  }

  /**
   * Takes what the tracking of a game says.
   *
   * @param game the game
   * @param kept what was found
   */
  void take(GameOutline game, TrackedGameKept kept) {
    rowsUsed += kept.rowsUsed();
    rowsSetAside += kept.rowsSetAside();
    kept.setAside().forEach(this::setAside);
    doubts.addAll(kept.doubts());
    kept.places().forEach(p -> places.add(p.sheet(), p.here()));
    for (int i = 0; i < kept.matches().size(); i++) {
      GameOutline.LetGo release = game.releases().get(i);
      matches.put(new Key(game.id(), release.sheet(), release.line()), kept.matches().get(i));
    }
  }

  private void setAside(DoubtfulRow row) {
    setAside.putIfAbsent(new Key("", row.row().file(), row.row().line()), row);
  }

  @Override
  public List<Around> at(Release release) {
    When when = release.at().when();
    asked++;
    ReleaseMatch match =
        matches.getOrDefault(
            new Key(when.game().id(), when.sheet(), when.line()),
            new ReleaseMatch.NotFound("the game was not tracked"));
    if (match instanceof ReleaseMatch.Found f) {
      found++;
      return List.of(f.around());
    }
    notFound.merge(((ReleaseMatch.NotFound) match).reason(), 1, Integer::sum);
    return List.of();
  }

  /** Rows that were not used, in their own words, as far as they were kept. */
  List<DoubtfulRow> setAside() {
    return List.copyOf(setAside.values());
  }

  /** The sum that must hold, as a sentence; empty without tracking sheets. */
  Optional<String> sum() {
    return given
        ? Optional.of(
            "Tracking: "
                + rowsRead
                + " rows read = "
                + rowsUsed
                + " used + "
                + rowsSetAside
                + " set aside"
                + (rowsOfOtherGames > 0
                    ? " + " + rowsOfOtherGames + " of games without a play sheet."
                    : "."))
        : Optional.empty();
  }

  /**
   * Prints what is doubtful, the sum, and what became of the releases that were asked for.
   *
   * @param out where to print
   * @param most most problems to print
   * @param kept folder with the rows set aside
   */
  void report(PrintWriter out, int most, Path kept) {
    if (!given) {
      return;
    }
    List<Problem> all = new ArrayList<>();
    setAside.values().forEach(d -> all.addAll(d.problems()));
    all.stream().limit(most).forEach(p -> out.println("Set aside: " + p.message()));
    if (all.size() > most) {
      out.println("... and " + (all.size() - most) + " more in tracking sheets, in " + kept);
    }
    doubts.stream().limit(most).forEach(p -> out.println("Doubtful: " + p.message()));
    if (doubts.size() > most) {
      out.println("... and " + (doubts.size() - most) + " more doubtful tracks and clocks");
    }
    places.doubt().ifPresent(d -> out.println("Look at this: " + d));
    out.println(sum().orElseThrow());
    if (rowsSetAside > setAside.size()) {
      out.println("Of the rows set aside " + setAside.size() + " are kept in their own words.");
    }
    out.println(
        "Tracking: skaters found at "
            + found
            + " of "
            + Format.count(asked, "puck")
            + " sent before the red line"
            + (notFound.isEmpty()
                ? "."
                : notFound.entrySet().stream()
                    .map(e -> e.getValue() + " " + e.getKey())
                    .collect(Collectors.joining("; ", ". Not found: ", "."))));
  }
}
