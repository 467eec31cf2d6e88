package twostrides.rulebook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a ruling may need to know of a situation: the words for each fact, and what an unsaid fact
 * is taken for. What decides most rulings is unknown until said; what seldom happens is taken not
 * to have happened.
 */
public enum FactKey {
  /** Where the puck was last played. */
  FROM(
      "where the puck was when it was last played",
      "unknown",
      "own-zone",
      "own-half",
      "on-the-line",
      "past-the-line"),
  /** With what. */
  CONTACT("what it was last played with", "stick", "skate", "kick", "hand", "body", "deflection"),
  /** Straight from a face-off. */
  FACE_OFF(
      "whether it came from a face-off: straight from the first contact, or played later",
      "no",
      "straight",
      "later"),
  /** Strength of the team that sent it. */
  STRENGTH(
      "strength of the team that sent it, at that instant",
      "unknown",
      "even",
      "power-play",
      "shorthanded",
      "short-no-penalty",
      "extra-attacker-against",
      "one-of-two-ended",
      "ended-before-release",
      "ended-at-release",
      "ended-after-release",
      "expired-major-empty-box"),
  /** Who touched it on the way. */
  TOUCH(
      "who or what touched it after that, and on which side of the goal line",
      "none",
      "opponent-before-line",
      "opponent-after-line",
      "goalkeeper-before-line",
      "goalkeeper-after-line",
      "goalkeeper-back-of-net",
      "teammate-short-of-center",
      "teammate-past-center",
      "official",
      "shot-rebound-off-this-team"),
  /** Where it ended. */
  PUCK(
      "what became of the puck",
      "unknown",
      "crossed",
      "crossed-in-the-air",
      "top-of-net",
      "through-crease",
      "off-goal-frame",
      "out-past-goal-line",
      "short-of-goal-line",
      "out-before-goal-line",
      "in-net"),
  /** An opponent who could have played it. */
  COULD_PLAY(
      "whether an opposing skater could have played it before the goal line",
      "unknown",
      "no",
      "yes",
      "declined-for-change"),
  /** The defending side leaves it alone. */
  ABSTAINED("whether the defending side left the puck alone on purpose", "no", "yes"),
  /** A pass somebody could have received. */
  PASS(
      "whether it was a pass that a teammate could have received, and where he stood",
      "none",
      "receiver-past-center",
      "receiver-own-side"),
  /** What the goalkeeper did without touching it. */
  GOALKEEPER(
      "what the defending goalkeeper did without touching it",
      "unknown",
      "stayed",
      "moved-toward",
      "came-out",
      "both-skates-toward",
      "left-for-extra-attacker"),
  /** The race. */
  RACE(
      "who would touch (under touch icing: who touched) the puck first",
      "unknown",
      "defender",
      "attacker",
      "level",
      "nobody"),
  /** Whose skate was first at the spots: the clock of the decision, not the decision. */
  FIRST_AT_SPOTS(
      "whose skate reached the end-zone spots first; it sets the deadline and decides nothing",
      "unknown",
      "defender",
      "attacker"),
  /** A defending skater past the own blue line, where nobody chases. */
  DEFENDER_BACK(
      "where nobody chases: whether a defending skater was past the own blue line",
      "unknown",
      "yes",
      "no"),
  /** Offside players of the team that sent it. */
  OFFSIDE(
      "offside players of the team that sent it: none, no danger, or first to the puck or about to"
          + " make contact",
      "none",
      "no-danger",
      "first-or-contact"),
  /** A penalty is signalled. */
  SIGNALLED("on which team a penalty was signalled", "none", "icing-team", "other-team"),
  /** Icing was whistled. */
  WHISTLED("whether icing was whistled already", "no", "yes"),
  /** Penalties at the same stoppage. */
  PENALTY(
      "penalties assessed at the same stoppage",
      "none",
      "icing-team",
      "other-team",
      "both-teams",
      "icing-team-misconduct",
      "other-team-misconduct"),
  /** A change that is asked for. */
  WANTS(
      "a change the icing team asks for at the draw, or a long delay before it",
      "none",
      "goalkeeper-back",
      "injured-out",
      "broken-skate",
      "rest-after-delay");

  private final String meaning;
  private final String unsaid;

  /** The words with spaces between: an enum holds no list. */
  private final String words;

  FactKey(String meaning, String... words) {
    this.meaning = meaning;
    this.unsaid = words[0];
    this.words = String.join(" ", words);
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

  /** The words for it; the first is what an unsaid fact is taken for. */
  public List<String> words() {
    return List.of(words.split(" "));
  }

  /** What an unsaid fact is taken for. */
  public String unsaid() {
    return unsaid;
  }

  /**
   * The fact of a column's name.
   *
   * @param column in lower case
   */
  public static Optional<FactKey> of(String column) {
    for (FactKey k : values()) {
      if (k.column().equals(column)) {
        return Optional.of(k);
      }
    }
    return Optional.empty();
  }
}
