package twostrides.exits;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.game.Game;
import twostrides.game.OnIce;
import twostrides.game.PlayRow;
import twostrides.race.Racer;
import twostrides.race.Sighting;
import twostrides.rink.Place;

/** Skaters whose places the play sheet itself writes down. */
final class SheetSkaters implements SkatersAtRelease {

  /**
   * An own skater this near the puck is who has it, metres. Assumed: in three tracked games (open
   * data) the nearest own skater was that near at 330 of 345 releases short of center, within 1.5 m
   * at 243.
   */
  static final double HAS_IT = 2.5;

  private record Key(String game, String sheet, long line) {}

  private final Map<Key, PlayRow> rows = new HashMap<>();

  /**
   * The skaters of some games.
   *
   * @param games the games
   */
  SheetSkaters(List<Game> games) {
    for (Game g : games) {
      for (PlayRow r : g.rows()) {
        if (!r.skaters().isEmpty() && r.place().isPresent()) {
          rows.put(new Key(g.id(), r.sheet(), r.line()), r);
        }
      }
    }
  }

  @Override
  public List<Around> at(String game, String sheet, long line) {
    return Optional.ofNullable(rows.get(new Key(game, sheet, line))).stream()
        .map(SheetSkaters::around)
        .toList();
  }

  private static Around around(PlayRow row) {
    Place puck = row.place().orElseThrow();
    Optional<OnIce> carrier = Optional.empty();
    for (OnIce s : row.skaters()) {
      double apart = s.place().distanceTo(puck);
      boolean nearer = carrier.map(c -> apart < c.place().distanceTo(puck)).orElse(apart <= HAS_IT);
      carrier = s.own() && nearer ? Optional.of(s) : carrier;
    }
    List<Sighting> others = new ArrayList<>();
    for (OnIce s : row.skaters()) {
      if (carrier.isEmpty() || !s.equals(carrier.get())) {
        others.add(Around.sighting(s, s.place()));
      }
    }
    return new Around(
        carrier
            .map(c -> Around.sighting(c, puck))
            .orElseGet(() -> new Sighting(new Racer(true, puck.x(), puck.y(), 0, 0), false)),
        others,
        0,
        "places from the play sheet");
  }
}
