package twostrides.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.race.Delivery;
import twostrides.race.Racer;
import twostrides.race.Scene;
import twostrides.race.SkaterSet;
import twostrides.race.WhatIf;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.Units;
import twostrides.rulebook.IcingBook;

/** One release as a person describes it on the command line. Nothing out of range is moved. */
final class ReleaseOptions {

  private static final String HELP = "two-strides whatif --help lists the options";

  /** Steepest and widest that is taken, degrees: beyond, the puck is not sent up ice. */
  private static final double WIDEST = 80;

  private static final double STEEPEST = 75;

  /** Fastest release taken, m/s: that of the puck model. */
  private static final double FASTEST = 60;

  private static final List<String> KINDS = List.of("sent", "pass");
  private static final List<String> PRESSURES = List.of("none", "light", "heavy");
  private static final List<String> STRENGTHS = List.of("even", "shorthanded", "power-play");

  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(
      names = "--release",
      paramLabel = "X,Y",
      description =
          "Where the puck is let go, from center ice: X along the rink, negative in the own half,"
              + " Y to the left of the attack.")
  String release;

  @Option(
      names = "--speed",
      paramLabel = "V",
      description =
          "Release speed, m/s (ft/s with --unit ft); left out it varies from simulation to simulation.")
  Double speed;

  @Option(
      names = "--direction",
      paramLabel = "DEG",
      description =
          "Degrees from straight up ice, positive to the left; left out it varies from simulation to simulation.")
  Double direction;

  @Option(
      names = "--loft",
      paramLabel = "DEG",
      description =
          "Degrees above the ice, 0 along it; left out it varies from simulation to simulation.")
  Double loft;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      defaultValue = "sent",
      description = "sent on with no receiver, or a pass that is not received (${DEFAULT-VALUE}).")
  String kind;

  @Option(
      names = "--pressure",
      paramLabel = "WORD",
      description = "none, light (a checker near) or heavy (a checker in reach).")
  String pressure;

  @Option(
      names = "--strength",
      paramLabel = "WORD",
      defaultValue = "even",
      description = "even, shorthanded or power-play, at the release (${DEFAULT-VALUE}).")
  String strength;

  @Option(names = "--net-empty", description = "The opponent's goalkeeper is off.")
  boolean netEmpty;

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      defaultValue = "elite-men",
      description =
          "Level of play: elite-men, elite-women, junior, youth-u15, youth-u13 (${DEFAULT-VALUE}).")
  String level;

  @Option(
      names = "--rink",
      paramLabel = "RINK",
      description = "nhl or iihf; left out it is the rulebook's.")
  String rinkName;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      defaultValue = "m",
      description =
          "m or ft: the unit of every length and speed on the command line (${DEFAULT-VALUE}).")
  String unit;

  @Option(
      names = "--skater",
      paramLabel = "own|opponent:X,Y[,VX,VY]",
      description =
          "A skater at the release; may be given several times. With none, ten are placed at random; with any,"
              + " nobody else is in the race.")
  List<String> skaters = new ArrayList<>();

  /** The words for the kind, the pressure and the strength, each checked. */
  void check() {
    word("--kind", kind, KINDS);
    word("--strength", strength, STRENGTHS);
    if (pressure != null) {
      word("--pressure", pressure, PRESSURES);
    }
  }

  /**
   * The release and who is there.
   *
   * @param book whose rink it is where nothing else says
   */
  Scene scene(IcingBook book) {
    check();
    Rink rink = rink(book);
    Units units = units();
    if (release == null) {
      throw refused("--release", "nothing", "X,Y", "Add it, for example --release -5,6");
    }
    double[] place = numbers("--release", release, release, 2, 2);
    double x = units.toMetres(place[0]);
    double y = units.toMetres(place[1]);
    if (!WhatIf.inside(rink, x, y)) {
      throw refused(
          "--release", "\"" + release + "\"", insideOf(rink), "Check the sign and --unit");
    }
    return new Scene(
        rink,
        x,
        y,
        delivery(units),
        target(rink, new Place(x, y)),
        racers(rink, units),
        skaterSet());
  }

  /** The loft, radians, where it is known. */
  OptionalDouble knownLoft() {
    return loft == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.toRadians(within("--loft", loft, 0, STEEPEST, "degrees")));
  }

  /** Pressure on the carrier, where somebody says. */
  Optional<String> pressure() {
    return Optional.ofNullable(pressure);
  }

  private Rink rink(IcingBook book) {
    if (rinkName == null) {
      return book.rink();
    }
    word("--rink", rinkName, Rink.ALL.stream().map(Rink::name).toList());
    return Rink.named(rinkName).orElseThrow();
  }

  private Units units() {
    word("--unit", unit, List.of(Units.METRE.symbol(), Units.FOOT.symbol()));
    return unit.equals(Units.FOOT.symbol()) ? Units.FOOT : Units.METRE;
  }

  private SkaterSet skaterSet() {
    return Skaters.find(level, spec.commandLine());
  }

  private Delivery delivery(Units units) {
    Delivery varied =
        (kind.equals("pass") ? Delivery.MISSED_PASS : Delivery.SENT).forLevel(skaterSet().level());
    if (speed == null) {
      return varied;
    }
    double v = units.toMetres(speed);
    if (!(v > 0 && v <= FASTEST)) {
      throw refused(
          "--speed",
          String.format(Locale.ROOT, "%s (%.1f m/s)", speed, v),
          "above 0 and up to 60 m/s",
          "Check --unit; leave it out to let it vary");
    }
    return varied.atSpeed(v);
  }

  private OptionalDouble target(Rink rink, Place from) {
    if (direction == null) {
      return OptionalDouble.empty();
    }
    double angle = Math.toRadians(within("--direction", direction, -WIDEST, WIDEST, "degrees"));
    if (from.x() >= rink.goalLine()) {
      throw refused(
          "--direction",
          String.valueOf(direction),
          "a release short of the far goal line",
          "Leave the direction out");
    }
    return OptionalDouble.of(from.y() + Math.tan(angle) * (rink.goalLine() - from.x()));
  }

  private List<Racer> racers(Rink rink, Units units) {
    List<Racer> racers = new ArrayList<>();
    for (String s : skaters) {
      racers.add(racer(s, rink, units));
    }
    if (!racers.isEmpty() && racers.stream().allMatch(Racer::chases)) {
      throw refused(
          "--skater",
          "own skaters only",
          "at least one opponent",
          "Add --skater opponent:X,Y, or leave all skaters out to have ten placed at random");
    }
    return racers;
  }

  private Racer racer(String said, Rink rink, Units units) {
    String option = "--skater " + said;
    int colon = said.indexOf(':');
    String side = colon < 0 ? said : said.substring(0, colon);
    if (colon < 0 || !(side.equals("own") || side.equals("opponent"))) {
      throw refused(
          option,
          "\"" + side + "\"",
          "own or opponent, a colon and the place",
          "For example --skater opponent:2,-4 or own:-8,3,5.5,0");
    }
    double[] n = numbers(option, said.substring(colon + 1), said, 2, 4);
    double x = units.toMetres(n[0]);
    double y = units.toMetres(n[1]);
    if (!WhatIf.inside(rink, x, y)) {
      throw refused(option, "a skater there", insideOf(rink), "Check the sign and --unit");
    }
    double vx = n.length == 4 ? units.toMetres(n[2]) : 0;
    double vy = n.length == 4 ? units.toMetres(n[3]) : 0;
    if (!(Math.hypot(vx, vy) <= Racer.FASTEST)) {
      throw refused(
          option,
          String.format(Locale.ROOT, "%.1f m/s", Math.hypot(vx, vy)),
          "at most " + Racer.FASTEST + " m/s, a speed that skaters reach",
          "Check VX,VY and --unit");
    }
    return new Racer(side.equals("own"), x, y, vx, vy);
  }

  private double[] numbers(String option, String text, String whole, int least, int most) {
    String[] parts = text.split(",", -1);
    double[] numbers = new double[parts.length];
    boolean good = parts.length == least || parts.length == most;
    for (int i = 0; good && i < parts.length; i++) {
      OptionalDouble read = number(parts[i].strip());
      good = read.isPresent();
      numbers[i] = read.orElse(0);
    }
    if (!good) {
      throw refused(
          option,
          "\"" + whole + "\"",
          least + (most > least ? " or " + most : "") + " numbers with commas between, no spaces",
          "Decimals take a point: -4.5,6");
    }
    return numbers;
  }

  private static OptionalDouble number(String text) {
    if (!text.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)")) {
      return OptionalDouble.empty();
    }
    double value = Double.parseDouble(text);
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private double within(String option, double value, double least, double most, String what) {
    if (!(value >= least && value <= most)) {
      throw refused(
          option,
          String.valueOf(value),
          String.format(Locale.ROOT, "%.0f to %.0f %s", least, most, what),
          "Leave it out to let it vary");
    }
    return value;
  }

  private static String insideOf(Rink rink) {
    return String.format(
        Locale.ROOT,
        "a place inside the boards of the %s rink: at most %.2f m (%.1f ft) from center along it,"
            + " %.2f m (%.1f ft) across, less in the corners",
        rink.name(),
        rink.length() / 2,
        Units.FOOT.fromMetres(rink.length() / 2),
        rink.width() / 2,
        Units.FOOT.fromMetres(rink.width() / 2));
  }

  private void word(String option, String found, List<String> known) {
    if (!known.contains(found)) {
      throw refused(option, "\"" + found + "\"", "one of " + String.join(", ", known), HELP);
    }
  }

  /** One message: the option, what was found, what was expected, what to do. */
  ParameterException refused(String option, String found, String expected, String remedy) {
    return new ParameterException(
        spec.commandLine(),
        option + ": found " + found + ", expected " + expected + ". " + remedy + ".");
  }
}
