package twostrides.rulebook;

/**
 * What a book says on one point, in some seasons, and how sure that is.
 *
 * @param key the point
 * @param value one of the words of the key, or a number as written
 * @param seasons the seasons in which it holds
 * @param clause clause of the rulebook, empty where none is known
 * @param source where it was read, in words
 * @param grade how sure it is
 */
public record Setting(
    SettingKey key, String value, Seasons seasons, String clause, String source, Grade grade) {

  /** Rejects a value that the key does not allow. */
  public Setting {
    if (!key.allows(value)) {
      throw new IllegalArgumentException(
          key.word() + " is " + key.allowed() + ", not \"" + value + "\"");
    }
  }

  /** Whether nobody has found a source: the value is assumed and must be shown as that. */
  public boolean assumed() {
    return grade == Grade.NOT_FOUND;
  }
}
