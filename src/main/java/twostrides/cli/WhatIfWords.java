package twostrides.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import twostrides.book.chart.ReleaseDiagram;
import twostrides.book.chart.Span;
import twostrides.race.Assumptions;
import twostrides.race.Chance;
import twostrides.race.Delivery;
import twostrides.race.Estimate;
import twostrides.race.LossRate;
import twostrides.race.PuckSpread;
import twostrides.race.RaceChances;
import twostrides.race.Scene;
import twostrides.race.SoftSpeeds;
import twostrides.race.Way;
import twostrides.race.WayOutcome;
import twostrides.race.WaysOut;
import twostrides.race.WhatIf;
import twostrides.rink.Place;
import twostrides.rink.Units;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Ruling;
import twostrides.rulebook.RulingWords;
import twostrides.stats.Count;

/** The answer to one release in plain words, line by line. */
final class WhatIfWords {

  /** A difference smaller than so many of its errors is too close to call. */
  private static final double CALLED = 2;

  /** An error smaller than half of what the last digit shows is left out. */
  private static final double SHOWN = 0.0005;

  private final ReleaseOptions options;
  private final WhatIf what;
  private final WaysOut ways;

  WhatIfWords(ReleaseOptions options, WhatIf what, WaysOut ways) {
    this.options = options;
    this.what = what;
    this.ways = ways;
  }

  /**
   * The answer before everything that it rests on: the cheapest way out and the chances, or where
   * center has been gained, the ruling.
   *
   * @param ruling what the book makes of it
   */
  List<String> answer(Ruling ruling) {
    if (what.shortOfCenter() <= 0) {
      return List.of(RulingWords.lines(ruling).get(0));
    }
    String gain = "chance of gaining center " + percent(ways.gain());
    String chances =
        what.canBeIcing()
            ? "Chance of icing " + percent(ways.icing()) + ", " + gain
            : "No icing; " + gain;
    return List.of(cheapest(), chances + ".");
  }

  /**
   * Where, how short, and the ruling.
   *
   * @param book the rulebook
   * @param facts what is known
   * @param ruling what the book makes of it
   */
  List<String> before(IcingBook book, Facts facts, Ruling ruling) {
    Scene scene = what.scene();
    List<String> lines = new ArrayList<>();
    lines.add(
        format(
            "Release at %.1f, %.1f m (%.1f, %.1f ft) on the %s rink, %s, %s%s.",
            scene.x(),
            scene.y(),
            feet(scene.x()),
            feet(scene.y()),
            scene.rink().name(),
            options.kind.equals("pass") ? "a pass that is not received" : "sent with no receiver",
            options.strength.replace('-', ' ')
                + (options.strength.equals("even") ? " strength" : ""),
            options.netEmpty ? ", their net empty" : ""));
    lines.add(gap(what, ways) + ".");
    boolean race = book.raceQuestion().isPresent();
    lines.add(
        race ? "If it goes the length and a defender is first to it:" : "If it goes the length:");
    RulingWords.lines(ruling).forEach(l -> lines.add("  " + l));
    RulingWords.assumptions(book, facts).forEach(l -> lines.add("  " + l));
    return lines;
  }

  /**
   * What becomes of the release, and the chance of gaining center.
   *
   * @param simulations number of simulations
   * @param seed their seed
   * @param undecided whether the ruling hangs on a fact that is not known
   */
  List<String> chances(int simulations, long seed, boolean undecided) {
    RaceChances r = ways.release();
    List<String> lines = new ArrayList<>();
    if (undecided) {
      lines.add("  What is not yet decided is counted as icing below.");
    }
    lines.add(
        format(
            "Let go now, in %d simulations (seed %d; simulation error after +/-):",
            simulations, seed));
    lines.add(
        (what.question().isPresent()
                ? "  goes the length, a defender first "
                : "  goes the length, nobody able to play it ")
            + share(r, r.icing()));
    if (what.question().isPresent()) {
      lines.add("  waved off, an own skater first " + share(r, r.wavedOff()));
    }
    lines.add("  dies short of their goal line " + share(r, r.stoppedShort()));
    lines.add("  an opponent can play it on the way " + share(r, r.touched()));
    lines.add("  in the net or over the glass " + share(r, r.other()));
    int n = what.scene().racers().size();
    lines.add(
        n == 0
            ? "  No skater was given: five of each team are placed at random about the puck (places assumed)."
            : "  Only the "
                + n
                + (n == 1 ? " skater given is" : " skaters given are")
                + " in the race.");
    if (what.canBeIcing()) {
      lines.add(icing());
    }
    if (what.shortOfCenter() > 0) {
      lines.add(gaining());
    }
    return lines;
  }

  private String icing() {
    Chance c = ways.icing();
    String whistle =
        ways.spread()
            .whistle()
            .map(
                w ->
                    format(
                        " The whistle then comes %.1f to %.1f s after the release (nine in ten).",
                        w.low(), w.high()))
            .orElse("");
    return format("Chance of icing %s: %s.%s", percent(c), ground(), whistle);
  }

  private String ground() {
    Delivery delivery = what.scene().delivery();
    if (delivery.known()) {
      return "that of the race; no real pucks of a known speed were there to check it by";
    }
    Count iced = delivery.iced();
    return format(
        "at most what was counted, %d of %d %s iced in six real games; the race itself, which sends"
            + " every puck the length, orders them no better than a coin",
        iced.successes(), iced.trials(), delivery.missedPass() ? "missed passes" : "pucks sent on");
  }

  /** A chance in whole per cent with its 95 % interval. */
  private static String percent(Chance c) {
    return format("%.0f %% (%.0f to %.0f %%)", 100 * c.p(), 100 * c.low(), 100 * c.high());
  }

  private String gaining() {
    LossRate losses = what.losses();
    String pressure =
        options
            .pressure()
            .map(p -> "under " + p.replace("none", "no") + " pressure")
            .orElse("where nobody says how much pressure there is");
    return format(
        "Chance of gaining center %s: %.2f losses of the puck a second %s, a prior that is assumed,"
            + " because no sheet was read, and more of them for who is about to let it go%s.",
        percent(ways.gain()),
        losses.perSecond(),
        pressure,
        what.scene().racers().isEmpty()
            ? ""
            : "; the skaters given do not change it, and once center is gained ten are placed anew");
  }

  /** The other ways out and the cheapest. */
  List<String> ways() {
    List<String> lines = new ArrayList<>();
    if (what.shortOfCenter() > 0) {
      lines.add(
          format(
              "Ways out over the same simulations. Price: attempts against within 20 s, beyond those after a"
                  + " puck sent deep; %.2f for a defensive-zone face-off, %.2f for a puck that the opponent"
                  + " takes before his own blue line (both assumed):",
              Assumptions.ATTEMPTS_AFTER_RESTART.value(), Assumptions.ATTEMPTS_AFTER_LOSS.value()));
      ways.outcomes().stream().filter(o -> !o.way().shot()).forEach(o -> way(o, lines));
      if (ways.outcome(Way.CHIP).isEmpty()) {
        lines.add("  a chip that dies before the red line: there is no room for one here");
      }
      if (ways.outcome(Way.SOFTER).isEmpty()) {
        lines.add("  a softer release: none in this direction dies in their end");
      }
    }
    if (what.netEmpty()) {
      shots(lines);
    }
    if (what.shortOfCenter() > 0) {
      lines.add(
          format(
              "A later change: the carry to the red line takes %.1f s, so the change can wait %.1f s."
                  + " Nothing read supports a number for what a change costs or saves; none is given.",
              ways.seconds(), ways.seconds()));
    }
    return lines;
  }

  private void way(WayOutcome o, List<String> lines) {
    lines.add(
        format(
            "  %s: price %.3f +/- %.3f; %s %s, defensive-zone face-off %s, lost before their blue line %s",
            o.way().words(),
            o.price().value(),
            o.price().error(),
            o.way().meant(),
            percent(o.meant()),
            percent(o.restart()),
            percent(o.lost())));
    Optional<SoftSpeeds> speeds = ways.speeds();
    if (o.way() == Way.SOFTER && speeds.isPresent()) {
      SoftSpeeds s = speeds.get();
      String leaves =
          s.leavesZone().isPresent()
              ? format("; from %.1f m/s it leaves the own zone", s.leavesZone().getAsDouble())
              : "";
      lines.add(
          format(
              "    along the ice%s, %.1f to %.1f m/s (%.0f to %.0f ft/s) on ordinary ice; %s%s",
              upIce(),
              s.farBlueLine(),
              s.goalLine(),
              feet(s.farBlueLine()),
              feet(s.goalLine()),
              missed(),
              leaves));
    } else if (o.way() == Way.CHIP && speeds.isPresent()) {
      SoftSpeeds s = speeds.get();
      lines.add(
          format(
              "    along the ice%s, %sunder %.1f m/s (%.0f ft/s) on ordinary ice; %s",
              upIce(),
              s.leavesZone().isPresent()
                  ? format("from %.1f and ", s.leavesZone().getAsDouble())
                  : "",
              s.redLine(),
              feet(s.redLine()),
              missed()));
    }
  }

  private String upIce() {
    return what.scene().targetY().isPresent() ? "" : " straight up ice";
  }

  private String missed() {
    return format(
        "the speed is missed by %.0f %% (standard deviation, assumed)",
        100 * Assumptions.SPEED_ERROR.value());
  }

  private String cheapest() {
    WayOutcome best = ways.cheapest();
    boolean now = best.way() == Way.RELEASE_NOW;
    Optional<WayOutcome> other = now ? ways.nextToReleasing() : ways.outcome(Way.RELEASE_NOW);
    if (other.isEmpty()) {
      return "Cheapest by these numbers: " + best.way().words() + ".";
    }
    Estimate saves = now ? other.get().saves() : best.saves();
    double less = Math.abs(saves.value());
    String close = less < CALLED * saves.error() ? ", too close to call by this simulation" : "";
    return format(
        "Cheapest by these numbers: %s, %.3f +/- %.3f less than %s%s.",
        best.way().words(),
        less,
        saves.error(),
        now ? other.get().way().words() : "releasing now",
        close);
  }

  private void shots(List<String> lines) {
    lines.add(
        format(
            "At their empty net: a shot along the ice at its middle, off by %.1f degrees (standard"
                + " deviation, assumed). A goal has no price here.",
            Math.toDegrees(Assumptions.SHOT_ERROR.value())));
    Optional<WayOutcome> now = ways.outcome(Way.SHOOT_NOW);
    Optional<WayOutcome> then = ways.outcome(Way.CENTER_THEN_SHOOT);
    now.ifPresent(
        o -> lines.add(shot(o, what.canBeIcing() ? "icing " : "defensive-zone face-off ")));
    then.ifPresent(o -> lines.add(shot(o, "no icing; defensive-zone face-off ")));
    if (now.isPresent() && then.isPresent()) {
      Estimate a = now.get().goal();
      Estimate b = then.get().goal();
      double more = b.value() - a.value();
      double error = Math.hypot(a.error(), b.error());
      lines.add(
          Math.abs(more) < CALLED * error
              ? "  Which of the two scores more often is too close to call."
              : format(
                  "  %s scores more often, by %.1f +/- %.1f in a hundred.",
                  more > 0 ? "Gaining center first" : "Shooting now",
                  100 * Math.abs(more),
                  100 * error));
    }
  }

  private String shot(WayOutcome o, String restart) {
    double other = Math.max(0, 1 - o.goal().value() - o.restart().value());
    double error = Math.sqrt(other * (1 - other) / ways.release().simulations());
    return "  "
        + o.way().words()
        + ": goal "
        + percent(o.goal())
        + ", "
        + restart
        + percent(o.restart())
        + ", other "
        + percent(new Estimate(other, error))
        + " (of which lost before their blue line "
        + percent(o.lost())
        + ")";
  }

  /** Who decides, and the caution: the last line. */
  List<String> close() {
    return List.of(
        "The league's rulebook and its officials decide.",
        "Arriving first is not worth arriving out of control: nothing here says anything about the"
            + " risk of injury; do not coach players to race to the end boards at full speed.");
  }

  /**
   * What the diagram shows.
   *
   * @param what the release
   * @param ways what was simulated
   */
  static ReleaseDiagram diagram(WhatIf what, WaysOut ways) {
    Scene scene = what.scene();
    PuckSpread spread = ways.spread();
    boolean reach = spread.reach().low() < spread.reach().high();
    return new ReleaseDiagram(
        scene.rink(),
        new Place(scene.x(), scene.y()),
        scene.racers().stream()
            .map(
                r -> new ReleaseDiagram.Skater(r.chases(), new Place(r.x(), r.y()), r.vx(), r.vy()))
            .toList(),
        spread.rows().stream()
            .map(r -> new ReleaseDiagram.Across(r.x(), r.low(), r.middle(), r.high()))
            .toList(),
        reach
            ? Optional.of(new Span(spread.reach().low(), spread.reach().high()))
            : Optional.empty(),
        gap(what, ways),
        format(
            "Band: 8 in 10 of %,d simulations go here, with nobody in the way; dashed: the middle"
                + " one.%s %.0f %% of them pass their goal line.",
            spread.simulations(),
            reach ? " Bracket: how far 8 in 10 get." : "",
            100 * spread.past()));
  }

  private static String gap(WhatIf what, WaysOut ways) {
    double metres = what.shortOfCenter();
    return metres > 0
        ? format(
            "%.1f m (%.1f ft) before the red line, %.1f s away at %.1f m/s",
            metres, feet(metres), ways.seconds(), Assumptions.PACE.value())
        : "Center is gained: the puck touches the red line or is past it";
  }

  private static String share(RaceChances r, int count) {
    return percent(new Estimate((double) count / r.simulations(), r.error(count)));
  }

  private static String percent(Estimate e) {
    return e.error() < SHOWN
        ? format("%.1f %%", 100 * e.value())
        : format("%.1f %% +/- %.1f", 100 * e.value(), 100 * e.error());
  }

  private static double feet(double metres) {
    return Units.FOOT.fromMetres(metres);
  }

  private static String format(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
