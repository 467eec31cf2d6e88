package twostrides.rulebook;

import java.util.EnumMap;
import java.util.Map;
import twostrides.rink.Rink;

/** The facts of one situation; whatever was not said has its key's usual word. */
public final class Facts {

  /** Nothing said. */
  public static final Facts NONE = new Facts(new EnumMap<>(FactKey.class));

  private final EnumMap<FactKey, String> said;

  private Facts(EnumMap<FactKey, String> said) {
    this.said = said;
  }

  /**
   * The facts with one more said.
   *
   * @param key the fact
   * @param word one of its words, or {@code unknown}
   */
  public Facts with(FactKey key, String word) {
    if (!key.words().contains(word) && !word.equals("unknown")) {
      throw new IllegalArgumentException(
          key.column() + " is " + String.join(", ", key.words()) + " or unknown, not " + word);
    }
    EnumMap<FactKey, String> more = new EnumMap<>(said);
    more.put(key, word);
    return new Facts(more);
  }

  /**
   * The facts of a map, each word checked.
   *
   * @param words word by fact
   */
  public static Facts of(Map<FactKey, String> words) {
    Facts facts = NONE;
    for (Map.Entry<FactKey, String> e : words.entrySet()) {
      facts = facts.with(e.getKey(), e.getValue());
    }
    return facts;
  }

  /**
   * The word of {@link FactKey#FROM} for a place.
   *
   * @param rink the rink
   * @param x metres from center ice, frame of the team that sent it
   */
  public static String from(Rink rink, double x) {
    if (rink.inOwnZone(x)) {
      return "own-zone";
    }
    double s = rink.shortOfCenter(x);
    if (s > 0) {
      return "own-half";
    }
    double lineAndPuck = 2 * (rink.redLineHalfWidth() + Rink.PUCK_RADIUS);
    return s >= -lineAndPuck ? "on-the-line" : "past-the-line";
  }

  /** The word for a fact. */
  public String word(FactKey key) {
    String word = said.get(key);
    return word == null ? key.unsaid() : word;
  }

  /** Whether a fact was said or not, and has this word. */
  boolean is(FactKey key, String word) {
    return word(key).equals(word);
  }

  /** Whether a fact has one of these words. */
  boolean isOne(FactKey key, String first, String second) {
    String word = word(key);
    return word.equals(first) || word.equals(second);
  }

  /** Whether nobody knows. */
  boolean unknown(FactKey key) {
    return is(key, "unknown");
  }

  @Override
  public String toString() {
    return said.toString();
  }
}
