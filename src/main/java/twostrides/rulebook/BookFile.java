package twostrides.rulebook;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A book as its file gives it, before a season is chosen.
 *
 * @param file name for messages
 * @param id name on the command line
 * @param name name on pages
 * @param edition what was read
 * @param seasons the seasons covered, empty to take those of the book it starts from
 * @param season the season in which to take the book it starts from, where the file says one
 * @param startsFrom the book it starts from
 * @param entries what it says itself, by key, in the file's order
 */
record BookFile(
    String file,
    String id,
    String name,
    String edition,
    Optional<Seasons> seasons,
    Optional<BookSeason> season,
    Optional<String> startsFrom,
    Map<SettingKey, List<Entry>> entries) {

  /** Copies the entries. */
  BookFile {
    EnumMap<SettingKey, List<Entry>> copy = new EnumMap<>(SettingKey.class);
    entries.forEach((k, v) -> copy.put(k, List.copyOf(v)));
    entries = copy;
  }

  /**
   * A setting and where it stands.
   *
   * @param setting the setting
   * @param line its line, from 1
   */
  record Entry(Setting setting, int line) {}

  /**
   * The entry of a key that holds in a season.
   *
   * @param key the key
   * @param in the season
   */
  Optional<Entry> entry(SettingKey key, BookSeason in) {
    Collection<Entry> all = entries.getOrDefault(key, List.of());
    return all.stream().filter(e -> e.setting().seasons().covers(in)).findFirst();
  }
}
