package twostrides.rulebook;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import twostrides.rink.Rink;
import twostrides.rulebook.penalty.PenaltyRules;

/**
 * One rulebook in one season: a setting for every key.
 *
 * @param id name used on the command line
 * @param name name used on pages
 * @param edition the edition that was read, and its icing rule
 * @param seasons the seasons that the book covers
 * @param season the season that it was asked for
 * @param settings every setting, by its key
 */
public record IcingBook(
    String id,
    String name,
    String edition,
    Seasons seasons,
    BookSeason season,
    Map<SettingKey, Setting> settings) {

  private static final double SECONDS = 60;

  /** Checks that no setting is missing. */
  public IcingBook {
    EnumMap<SettingKey, Setting> copy = new EnumMap<>(SettingKey.class);
    copy.putAll(settings);
    for (SettingKey key : SettingKey.values()) {
      if (!copy.containsKey(key)) {
        throw new IllegalArgumentException("book " + id + " says nothing on " + key.word());
      }
    }
    settings = copy;
  }

  /** Every setting, by its key, in the keys' order; a copy. */
  @Override
  public Map<SettingKey, Setting> settings() {
    return new EnumMap<>(settings);
  }

  /**
   * What the book says on one point.
   *
   * @param key the point
   */
  public Setting setting(SettingKey key) {
    return settings.get(key);
  }

  /**
   * Whether the book says this on its point.
   *
   * @param choice one of the words of a setting
   */
  public boolean says(Choice choice) {
    return settings.get(choice.key()).value().equals(choice.word());
  }

  /**
   * What a rule of this book rests on.
   *
   * @param rule the rule's short name
   * @param key the setting
   */
  Basis basis(String rule, SettingKey key) {
    return new Basis(rule, setting(key));
  }

  /**
   * Which word the book gives.
   *
   * @param key a key that takes a word
   */
  Choice choice(SettingKey key) {
    return key.choices().filter(this::says).findFirst().orElseThrow();
  }

  /**
   * A number of the book.
   *
   * @param key a key that takes a number
   */
  public double number(SettingKey key) {
    return Double.parseDouble(settings.get(key).value());
  }

  /** The settings for which no source was found: assumed until somebody chooses them. */
  public List<Setting> assumed() {
    return settings.values().stream().filter(Setting::assumed).toList();
  }

  /** How many settings have each grade: "12 P, 3 S". */
  public String grades() {
    return settings.values().stream()
        .collect(Collectors.groupingBy(Setting::grade, TreeMap::new, Collectors.counting()))
        .entrySet()
        .stream()
        .map(e -> e.getValue() + " " + e.getKey().letter())
        .collect(Collectors.joining(", "));
  }

  /** The question that this book puts to a race; empty where the goal line alone decides. */
  public Optional<RaceQuestion> raceQuestion() {
    boolean levelIsIcing = says(Choice.TIE_ICING);
    if (says(Choice.TYPE_TOUCH)) {
      return Optional.of(new RaceQuestion(RaceQuestion.Deadline.TOUCH, levelIsIcing));
    }
    return says(Choice.TYPE_HYBRID)
        ? Optional.of(new RaceQuestion(RaceQuestion.Deadline.END_ZONE_SPOTS, levelIsIcing))
        : Optional.empty();
  }

  /** What the book says about manpower. */
  public PenaltyRules penaltyRules() {
    return new PenaltyRules(
        new PenaltyRules.Lengths(
            number(SettingKey.MINOR_MINUTES) * SECONDS,
            number(SettingKey.MAJOR_MINUTES) * SECONDS,
            PenaltyRules.Lengths.COMMON.matchSeconds()),
        (int) number(SettingKey.FEWEST_SKATERS),
        OptionalInt.of((int) number(SettingKey.OVERTIME_SKATERS)),
        says(Choice.COINCIDENTAL_MINORS_FOUR_ON_FOUR)
            ? PenaltyRules.CoincidentalMinors.FOUR_ON_FOUR
            : PenaltyRules.CoincidentalMinors.CANCEL,
        says(Choice.SHORTHANDED_GOAL_FREES_YES),
        says(Choice.EXPIRED_MAJOR_EXEMPT_YES),
        says(Choice.AT_EXPIRY_OVER)
            ? PenaltyRules.AtExpiry.OVER
            : PenaltyRules.AtExpiry.STILL_SERVED);
  }

  /** The rink where nothing else says which. */
  public Rink rink() {
    return Rink.named(setting(SettingKey.RINK).value()).orElseThrow();
  }

  /**
   * The book as it is played, where something else than the book says so.
   *
   * @param key the point
   * @param value what is played
   * @param source who says so
   */
  public IcingBook played(SettingKey key, String value, String source) {
    return with(List.of(new Setting(key, value, Seasons.ALL, "", source, Grade.CHOSEN)));
  }

  /**
   * The book with other settings, for "what if this were otherwise".
   *
   * @param others settings that replace the book's
   */
  IcingBook with(Collection<Setting> others) {
    EnumMap<SettingKey, Setting> changed = new EnumMap<>(settings);
    others.forEach(s -> changed.put(s.key(), s));
    return new IcingBook(id, name, edition, seasons, season, changed);
  }
}
