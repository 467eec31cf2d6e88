package twostrides.rulebook;

import java.util.Arrays;
import java.util.EnumMap;
import twostrides.rink.Rink;

/** The facts of one situation; whatever was not said has its key's usual word. */
public final class Facts {

  /** Nothing said. */
  public static final Facts NONE = new Facts(usual());

  private final EnumMap<FactKey, Fact> facts;

  private Facts(EnumMap<FactKey, Fact> facts) {
    this.facts = facts;
  }

  private static EnumMap<FactKey, Fact> usual() {
    EnumMap<FactKey, Fact> usual = new EnumMap<>(FactKey.class);
    for (FactKey key : FactKey.values()) {
      usual.put(key, key.unsaid());
    }
    return usual;
  }

  /**
   * The facts with more said; of two with one key the later holds.
   *
   * @param others what else is known
   */
  public Facts with(Fact... others) {
    EnumMap<FactKey, Fact> more = new EnumMap<>(facts);
    for (Fact f : others) {
      more.put(f.key(), f);
    }
    return new Facts(more);
  }

  /**
   * The facts with one more said.
   *
   * @param key the fact
   * @param word one of its words
   */
  public Facts with(FactKey key, String word) {
    return with(
        key.fact(word)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        key.column() + " is " + String.join(", ", key.words()) + ", not " + word)));
  }

  /**
   * Where a puck at a place was: the fact for {@link FactKey#FROM}.
   *
   * @param rink the rink
   * @param x metres from center ice, frame of the team that sent it
   */
  public static Fact from(Rink rink, double x) {
    if (rink.inOwnZone(x)) {
      return Fact.FROM_OWN_ZONE;
    }
    double s = rink.shortOfCenter(x);
    if (s > 0) {
      return Fact.FROM_OWN_HALF;
    }
    double lineAndPuck = 2 * (rink.redLineHalfWidth() + Rink.PUCK_RADIUS);
    return s >= -lineAndPuck ? Fact.FROM_ON_THE_LINE : Fact.FROM_PAST_THE_LINE;
  }

  /** What is known for a key: what was said, or what an unsaid fact is taken for. */
  Fact get(FactKey key) {
    return facts.get(key);
  }

  /** Whether this fact holds, said or not. */
  boolean is(Fact fact) {
    return get(fact.key()) == fact;
  }

  /** Whether one of some facts holds. */
  boolean is(Fact... some) {
    return Arrays.asList(some).stream().anyMatch(this::is);
  }

  /** Whether nobody knows. */
  boolean unknown(FactKey key) {
    return get(key).unknown();
  }

  @Override
  public String toString() {
    return facts.values().toString();
  }
}
