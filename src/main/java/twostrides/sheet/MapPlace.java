package twostrides.sheet;

import java.util.OptionalLong;

/**
 * A place in a sheet map, for messages.
 *
 * @param file the map, as the user named it
 * @param line line of the map, from 1
 * @param character character of that line, from 1
 * @param key the key that stands there, {@code columns.clock}
 */
record MapPlace(String file, long line, int character, String key) {
  /**
   * The error that something at this place is wrong.
   *
   * @param found what was found, a phrase
   * @param expected what was expected, a phrase
   * @param toDo what the reader can do about it, a sentence
   */
  SheetException error(String found, String expected, String toDo) {
    String place = "character " + character + (key.isEmpty() ? "" : ", key \"" + key + "\"");
    return new SheetException(file, OptionalLong.of(line), place, found, expected, toDo);
  }
}
