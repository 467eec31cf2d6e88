package twostrides.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a ruling may need to know of a situation. The words for each are the constants of {@link
 * Fact}. What decides most rulings is unknown until said; what seldom happens is taken not to have
 * happened.
 */
public enum FactKey {
  /** Where the puck was last played. */
  FROM("where the puck was when it was last played"),
  /** With what. */
  CONTACT("what it was last played with"),
  /** How it came over center. */
  OVER_CENTER(
      "where it was past the red line when last played: what it was on as it came over that line (a pass received beyond it came on a stick)"),
  /** Straight from a face-off. */
  FACE_OFF("whether it came from a face-off: straight from the first contact, or played later"),
  /** Strength of the team that sent it. */
  STRENGTH("strength of the team that sent it, at that instant"),
  /** Who touched it on the way. */
  TOUCH("who or what touched it after that, and on which side of the goal line"),
  /** Where it ended. */
  PUCK("what became of the puck"),
  /** An opponent who could have played it. */
  COULD_PLAY("whether an opposing skater could have played it before the goal line"),
  /** The defending side leaves it alone. */
  ABSTAINED("whether the defending side left the puck alone on purpose"),
  /** A pass somebody could have received. */
  PASS("whether it was a pass that a teammate could have received, and where he stood"),
  /** What the goalkeeper did without touching it. */
  GOALKEEPER("what the defending goalkeeper did without touching it"),
  /** The race. */
  RACE("who would touch (under touch icing: who touched) the puck first"),
  /** Whose skate was first at the spots: the clock of the decision, not the decision. */
  FIRST_AT_SPOTS(
      "whose skate reached the end-zone spots first; it sets the deadline and decides nothing"),
  /** A defending skater past the own blue line, where nobody chases. */
  DEFENDER_BACK("where nobody chases: whether a defending skater was past the own blue line"),
  /** Offside players of the team that sent it. */
  OFFSIDE(
      "offside players of the team that sent it: none, no danger, or first to the puck or about to make contact"),
  /** A penalty is signalled. */
  SIGNALLED("on which team a penalty was signalled"),
  /** Icing was whistled. */
  WHISTLED("whether icing was whistled already"),
  /** Penalties at the same stoppage. */
  PENALTY("penalties assessed at the same stoppage"),
  /** A change that is asked for. */
  WANTS("a change the icing team asks for at the face-off, or a long delay before it");

  private final String meaning;

  FactKey(String meaning) {
    this.meaning = meaning;
  }

  /** The name of the column and of the option: {@code could_play}. */
  public String column() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The name of the command-line option, without its dashes: {@code could-play}. */
  public String option() {
    return column().replace('_', '-');
  }

  /** What the fact is, a phrase. */
  public String meaning() {
    return meaning;
  }

  /** The words for it; the first is what an unsaid fact is taken for, one is "unknown". */
  public List<String> words() {
    return facts().map(Fact::word).toList();
  }

  /** What an unsaid fact is taken for. */
  public Fact unsaid() {
    return facts().findFirst().orElseThrow();
  }

  /**
   * The fact of a word.
   *
   * @param word one of {@link #words}
   */
  public Optional<Fact> fact(String word) {
    return facts().filter(f -> f.word().equals(word)).findFirst();
  }

  /** The words as constants, in the same order. */
  Stream<Fact> facts() {
    return Arrays.stream(Fact.values()).filter(f -> f.key() == this);
  }

  /**
   * The fact of a column's name.
   *
   * @param column in lower case
   */
  public static Optional<FactKey> of(String column) {
    return Arrays.stream(values()).filter(k -> k.column().equals(column)).findFirst();
  }
}
