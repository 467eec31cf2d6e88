package twostrides.season;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import twostrides.exits.AtCenter;
import twostrides.exits.Exit;

/**
 * Counts of exit attempts of a player.
 *
 * @param kind whose, and of what kind
 * @param attempts how many
 * @param restarts own-zone restarts that followed
 */
record PlayerCount(Kind kind, int attempts, int restarts) {

  /**
   * Exit attempts that are counted together.
   *
   * @param team his team
   * @param player the player; empty where the sheet names nobody
   * @param way way out
   * @param mark what happened at center
   * @param strength strength at the release
   */
  record Kind(
      String team, Optional<String> player, String way, Optional<String> mark, String strength) {

    private static final Comparator<Kind> ORDER =
        Comparator.comparing(Kind::team)
            .thenComparing(k -> k.player().orElse(""))
            .thenComparing(Kind::way)
            .thenComparing(k -> k.mark().orElse(""))
            .thenComparing(Kind::strength);

    private static Kind of(Exit e) {
      return new Kind(
          e.at().team(),
          e.player(),
          e.way().label(),
          e.mark().map(AtCenter::label),
          e.at().state().strength().label());
    }
  }

  static List<PlayerCount> of(List<Exit> exits) {
    return exits.stream()
        .collect(
            Collectors.groupingBy(Kind::of, () -> new TreeMap<>(Kind.ORDER), Collectors.toList()))
        .entrySet()
        .stream()
        .map(e -> of(e.getKey(), e.getValue()))
        .toList();
  }

  private static PlayerCount of(Kind kind, List<Exit> exits) {
    return new PlayerCount(
        kind,
        exits.size(),
        (int) exits.stream().filter(e -> e.outcome().restarted().orElse(false)).count());
  }
}
