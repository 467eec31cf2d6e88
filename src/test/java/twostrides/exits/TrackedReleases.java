package twostrides.exits;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import twostrides.game.Game;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.race.GainChance;
import twostrides.race.MeasuredGain;
import twostrides.race.SeededRandom;
import twostrides.race.SkaterLevel;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/**
 * Releases short of center in sheets that write where everybody was: measured, and as any sheet has
 * them.
 */
public final class TrackedReleases {

  /** What a map has to say of these sheets, which are native ones otherwise. */
  private static final String MAP =
      """
      sheet = "play"
      [place]
      step = 0.1
      [rink]
      name = "iihf"
      """;

  private static final int DRAWS = 400;

  private TrackedReleases() {}

  /**
   * A release.
   *
   * @param game its game
   * @param metresShort metres short of center
   * @param carried metres up ice since he got it
   * @param offMiddle metres from the long axis, either side
   * @param missedPass whether it was a pass that nobody received
   * @param gain the chance of gaining center by the places of skaters
   */
  public record Release(
      String game,
      double metresShort,
      double carried,
      double offMiddle,
      boolean missedPass,
      GainChance gain) {}

  /**
   * The releases of native sheets.
   *
   * @param folder where they lie
   * @param level level of play by a game's id
   */
  public static List<Release> of(
      Path folder, java.util.function.Function<String, SkaterLevel> level)
      throws IOException, SheetException {
    List<Game> games = games(folder);
    List<Release> out = new ArrayList<>();
    for (Game game : games) {
      for (twostrides.exits.Release r : GameReader.read(game, Settings.DEFAULT).releases()) {
        around(game, r).ifPresent(a -> out.add(release(r, a, level.apply(game.id()))));
      }
    }
    return out;
  }

  /** Everybody whom the release's row writes down. */
  private static Optional<Around> around(Game game, twostrides.exits.Release r) {
    return game.rows().stream()
        .filter(row -> row.line() == r.at().when().line())
        .filter(row -> row.team().equals(Optional.of(r.at().team())))
        .findFirst()
        .flatMap(Around::of);
  }

  private static Release release(twostrides.exits.Release r, Around around, SkaterLevel level) {
    String game = r.at().when().game().id();
    MeasuredGain race =
        new MeasuredGain(
            r.at().when().game().rink(),
            around.carrier(),
            around.others().stream().filter(s -> !s.racer().chases()).toList(),
            level.settings());
    return new Release(
        game,
        r.shortOfCenter(),
        r.how().carried().orElseThrow(),
        Math.abs(r.at().where().place().orElseThrow().y()),
        r.how().kind() == LetGo.Kind.MISSED_PASS,
        race.run(new SeededRandom(1, game + "#" + r.at().when().line()), DRAWS));
  }

  /** The games of native sheets with places in steps of 0.1 m on the 60 x 30 m rink. */
  static List<Game> games(Path folder) throws IOException, SheetException {
    Path map = Files.createTempFile("tracked", ".toml");
    try (Stream<Path> files = Files.list(folder)) {
      Files.writeString(map, MAP);
      return SeasonReader.read(
              files.filter(f -> f.toString().endsWith(".csv")).sorted().toList(),
              Optional.of(SheetMap.read(map, SheetForms.ALL)),
              false,
              n -> {})
          .games();
    } finally {
      Files.delete(map);
    }
  }
}
