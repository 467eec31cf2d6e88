package twostrides.season;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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

  private static final List<String> KEY =
      List.of(Columns.TEAM, Columns.PLAYER, Columns.WAY_OUT, Columns.AT_CENTER, Columns.STRENGTH);

  private static final Comparator<PlayerCount> ORDER =
      Comparator.comparing(PlayerCount::team)
          .thenComparing(c -> c.player().orElse(""))
          .thenComparing(PlayerCount::way)
          .thenComparing(c -> c.mark().orElse(""))
          .thenComparing(PlayerCount::strength);

  static List<PlayerCount> of(Rows exits) {
    return exits.by(KEY.toArray(String[]::new)).entrySet().stream()
        .map(e -> of(e.getKey(), e.getValue()))
        .sorted(ORDER)
        .toList();
  }

  private static PlayerCount of(List<String> key, Rows rows) {
    return new PlayerCount(
        key.get(0),
        Optional.of(key.get(1)).filter(p -> !p.isEmpty()),
        key.get(2),
        Optional.of(key.get(3)).filter(m -> !m.isEmpty()),
        key.get(4),
        rows.n(),
        rows.isTrue(Columns.OWN_ZONE_RESTART).n());
  }
}
