package twostrides.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import twostrides.stats.Count;

/** How often icing followed an exit attempt, game by game, while the exits go by in order. */
final class Changes {

  private final Map<String, Map<String, Count>> byGame = new LinkedHashMap<>();

  /** Counts one attempt; one whose ending the sheet does not tell opens its game only. */
  void exit(String game, String team, Optional<Boolean> iced) {
    Map<String, Count> teams = byGame.computeIfAbsent(game, g -> new TreeMap<>());
    iced.ifPresent(i -> teams.merge(team, new Count(i ? 1 : 0, 1), Count::plus));
  }

  /** Icings of attempts by game, of our team or of all. */
  List<Count> icings(Optional<String> ours) {
    List<Count> counts = new ArrayList<>();
    for (Map<String, Count> teams : byGame.values()) {
      counts.add(
          teams.entrySet().stream()
              .filter(e -> ours.isEmpty() || ours.get().equals(e.getKey()))
              .map(Map.Entry::getValue)
              .reduce(new Count(0, 0), Count::plus));
    }
    return counts;
  }
}
