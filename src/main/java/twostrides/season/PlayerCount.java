package twostrides.season;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import twostrides.exits.AtCenter;
import twostrides.exits.Exit;

/**
 * Counts of exit attempts of a player.
 *
 * @param team his team
 * @param player the player; empty where the sheet names nobody
 * @param way way out
 * @param mark what happened at center
 * @param strength strength at the release
 * @param attempts how many
 * @param restarts own-zone restarts that followed
 */
record PlayerCount(
    String team,
    Optional<String> player,
    String way,
    Optional<String> mark,
    String strength,
    int attempts,
    int restarts) {

  private static final Comparator<PlayerCount> ORDER =
      Comparator.comparing(PlayerCount::team)
          .thenComparing(c -> c.player().orElse(""))
          .thenComparing(PlayerCount::way)
          .thenComparing(c -> c.mark().orElse(""))
          .thenComparing(PlayerCount::strength);

  private record Key(
      String team, Optional<String> player, String way, Optional<String> mark, String strength) {
    static Key of(Exit e) {
      return new Key(
          e.at().team(),
          e.player(),
          e.way().label(),
          e.mark().map(AtCenter::label),
          e.at().state().strength().label());
    }
  }

  static List<PlayerCount> of(List<Exit> exits) {
    return exits.stream().collect(Collectors.groupingBy(Key::of)).entrySet().stream()
        .map(e -> of(e.getKey(), e.getValue()))
        .sorted(ORDER)
        .toList();
  }

  private static PlayerCount of(Key key, List<Exit> exits) {
    return new PlayerCount(
        key.team(),
        key.player(),
        key.way(),
        key.mark(),
        key.strength(),
        exits.size(),
        (int) exits.stream().filter(e -> e.outcome().restarted().orElse(false)).count());
  }
}
