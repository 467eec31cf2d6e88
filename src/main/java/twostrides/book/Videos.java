package twostrides.book;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.exits.When;

/**
 * What a run knows of the games' videos.
 *
 * @param name a game's file as playlists name it, seen from the folder clips; {@code {game}} stands
 *     for the game's id
 * @param own files that have another name, by the game's id
 * @param unsure rows whose second is not exact, by sheet and line as {@link Show#source} says them:
 *     seconds by which it may be off, empty where it drifts and nobody can say
 */
public record Videos(String name, Map<String, String> own, Map<String, OptionalDouble> unsure) {

  /** Copies the maps. */
  public Videos {
    own = Map.copyOf(own);
    unsure = Map.copyOf(unsure);
  }

  /**
   * Files that are named alike, and seconds that are exact.
   *
   * @param name a game's file, {@code {game}} standing for the game's id
   */
  public static Videos named(String name) {
    return new Videos(name, Map.of(), Map.of());
  }

  /** Seconds by which a clip of an instant starts earlier and ends later, 0 where it is exact. */
  double off(When when) {
    return Optional.ofNullable(unsure.get(Show.source(when)))
        .orElse(OptionalDouble.empty())
        .orElse(0);
  }

  /** What is to be said of an instant's second; empty where it is exact. */
  String doubt(When when) {
    OptionalDouble off = unsure.get(Show.source(when));
    return off == null
        ? ""
        : off.isEmpty()
            ? "second drifts"
            : String.format(Locale.ROOT, "second inferred, off by up to %.1f s", off.getAsDouble());
  }
}
