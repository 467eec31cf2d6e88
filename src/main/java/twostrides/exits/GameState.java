package twostrides.exits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.game.NetEmpty;
import twostrides.game.Pressure;
import twostrides.game.Strength;

/**
 * How things stood for a team.
 *
 * @param strength its strength
 * @param netEmpty whose net was empty, where the sheet says so
 * @param pressure how close the nearest checker was, where the sheet says so
 * @param goalsAhead goals it was ahead by, below 0 when behind; empty where a game writes no shots
 * @param onIce its skaters on the ice, by name, sorted; empty where the sheet does not list them
 * @param sinceShorthanded seconds of play since a row last showed it shorthanded in this period, 0
 *     while it is; empty when it was not
 * @param kill number of the penalty kill in its game, from 1, while shorthanded
 */
public record GameState(
    Strength strength,
    Optional<NetEmpty> netEmpty,
    Optional<Pressure> pressure,
    OptionalInt goalsAhead,
    List<String> onIce,
    OptionalDouble sinceShorthanded,
    OptionalInt kill) {

  /** Copies the list. */
  public GameState {
    netEmpty = Shared.of(netEmpty);
    pressure = Shared.of(pressure);
    goalsAhead = Shared.of(goalsAhead);
    onIce = Shared.of(List.copyOf(onIce));
    sinceShorthanded = Shared.tenths(sinceShorthanded);
    kill = Shared.of(kill);
  }
}
