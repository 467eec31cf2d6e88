package twostrides.race;

import static twostrides.race.SourceGrade.ASSUMED;
import static twostrides.race.SourceGrade.COMPUTED;
import static twostrides.race.SourceGrade.MEMORY_LOW;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Default skaters by level of play. Top speed and tau were chosen to agree with published sprint
 * means; no table of splits on ice could be read, so each carries an honest range: 10 % either side
 * on top speed, 1.2 to 1.8 s on tau. The other parameters are the same at every level.
 *
 * <p>No level between junior (U18 to U20) and U15 is offered: no value for it could be read.
 */
public enum SkaterLevel {
  /** Elite men. */
  ELITE_MEN(
      "elite-men",
      "elite men",
      9.6,
      1.45,
      "between 8.96 m/s in a standing-start sprint (Budarick et al. 2018, Sports Biomechanics,"
          + " abstract) and 9.6 to 9.9 m/s, mean of players' fastest of an NHL season (league"
          + " tracking 2023-24, reported)",
      COMPUTED),
  /** Elite women. */
  ELITE_WOMEN(
      "elite-women",
      "elite women",
      8.5,
      1.45,
      "8.02 m/s in a standing-start sprint (Budarick et al. 2018, abstract) and 8.19 m/s in games"
          + " (Gamble et al. 2024, IJSPP 19:496, abstract); women to men 0.895",
      COMPUTED),
  /** Junior men, U18 to U20. */
  JUNIOR(
      "junior",
      "junior men U18 to U20",
      9.1,
      1.45,
      "elite men x 0.946, junior to senior men in bandy (van den Tillaar et al. 2023, Front."
          + " Physiol. 14:1055863, abstract)",
      COMPUTED),
  /** Youth under 15. */
  YOUTH_U15(
      "youth-u15",
      "youth U15",
      8.0,
      1.50,
      "ratio to elite men from memory: weakly based",
      MEMORY_LOW),
  /** Youth under 13. */
  YOUTH_U13(
      "youth-u13",
      "youth U13",
      7.1,
      1.50,
      "ratio to elite men from memory: weakly based",
      MEMORY_LOW);

  /** Share by which the top speed may be off either way, assumed. */
  private static final double SPEED_RANGE = 0.10;

  private static final double TAU_LOW = 1.2;
  private static final double TAU_HIGH = 1.8;
  private static final Parameter REACTION =
      new Parameter(
          "reaction time",
          0.35,
          0.2,
          0.5,
          "s",
          "choice reaction 0.30 to 0.45 s from memory; 0.2 already moving, 0.5 turning back",
          MEMORY_LOW);

  private static final Parameter CARRY =
      new Parameter(
          "top speed with the puck, factor",
          0.95,
          0.88,
          0.98,
          "1",
          "straight ahead, from memory; more is lost in turns",
          MEMORY_LOW);

  private static final Parameter REACH =
      new Parameter(
          "reach of stick and arm",
          1.5,
          0,
          2.0,
          "m",
          "assumed against a carrier; two thirds of it in a race to a loose puck (1.0 m, tracked"
              + " men's games); 0 where a skate counts",
          ASSUMED);

  private static final Parameter SIGMA =
      new Parameter(
          "arrival error, standard deviation",
          0.50,
          0.3,
          0.8,
          "s",
          "against a carrier; carriers of two tracked men's games; a fifth more in a race to a loose"
              + " puck (0.60 s)",
          COMPUTED);

  private final String word;
  private final String title;
  private final double topSpeed;
  private final double tau;
  private final String source;
  private final SourceGrade grade;

  SkaterLevel(
      String word, String title, double topSpeed, double tau, String source, SourceGrade grade) {
    this.word = word;
    this.title = title;
    this.topSpeed = topSpeed;
    this.tau = tau;
    this.source = source;
    this.grade = grade;
  }

  /** The word that run files and commands use. */
  public String word() {
    return word;
  }

  /** The name on pages. */
  public String title() {
    return title;
  }

  /** The level's default skater. */
  public SkaterSettings settings() {
    return new SkaterSettings(
        topSpeed, tau, REACTION.value(), CARRY.value(), REACH.value(), SIGMA.value());
  }

  /** The level's parameters with range, source and grade, in the order of the settings. */
  public List<Parameter> parameters() {
    return List.of(
        new Parameter(
            "top speed",
            topSpeed,
            topSpeed * (1 - SPEED_RANGE),
            topSpeed * (1 + SPEED_RANGE),
            "m/s",
            source,
            grade),
        new Parameter(
            "time constant of the sprint",
            tau,
            TAU_LOW,
            TAU_HIGH,
            "s",
            "chosen so that a sprint from rest meets published 15 m and 30 m means; trades off"
                + " against the unknown timing offset of the gates",
            grade),
        REACTION,
        CARRY,
        REACH,
        SIGMA);
  }

  /**
   * The level of a word, in either case and with spaces or underscores for hyphens; "u18" and "u20"
   * are the junior level.
   *
   * @param word as a person writes it
   */
  public static Optional<SkaterLevel> of(String word) {
    String plain = word.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    return switch (plain) {
      case "u18", "u20" -> Optional.of(JUNIOR);
      case "u15" -> Optional.of(YOUTH_U15);
      case "u13" -> Optional.of(YOUTH_U13);
      default -> Arrays.stream(values()).filter(v -> v.word.equals(plain)).findFirst();
    };
  }

  /** The words that {@link #of} knows, for messages. */
  public static String words() {
    return Arrays.stream(values()).map(SkaterLevel::word).collect(Collectors.joining(", "));
  }
}
