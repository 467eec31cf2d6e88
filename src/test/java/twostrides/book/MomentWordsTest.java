package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import twostrides.exits.Against;
import twostrides.exits.AtCenter;
import twostrides.exits.Exit;
import twostrides.exits.ExitOutcome;
import twostrides.exits.GameState;
import twostrides.exits.Onward;
import twostrides.exits.RestartCause;
import twostrides.exits.Situation;
import twostrides.exits.WayOut;
import twostrides.exits.When;
import twostrides.exits.Where;
import twostrides.findings.Moment;
import twostrides.game.Fixture;
import twostrides.game.Pressure;
import twostrides.game.Strength;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/** What a sheet says of a moment, and that it says no more than the row does. */
class MomentWordsTest {

  private static final Fixture GAME =
      new Fixture("one", Optional.empty(), Optional.empty(), Rink.NORTH_AMERICAN, 0.1, 1200);

  private static Moment moment(
      Moment.Kind kind,
      Optional<WayOut> way,
      Strength strength,
      Optional<Pressure> pressure,
      OptionalDouble shift,
      Optional<RestartCause> cause,
      Optional<Against> against) {
    boolean worked = kind == Moment.Kind.WORKED;
    Situation at =
        new Situation(
            new When(GAME, 2, 413, OptionalDouble.empty(), "one.csv", 7),
            "Herons",
            Optional.of("Wolves"),
            Optional.of("8 Brandt"),
            new Where(
                Optional.of(new Place(-4, 2)),
                worked ? OptionalDouble.empty() : OptionalDouble.of(3.8),
                Optional.empty()),
            Onward.UNKNOWN,
            new GameState(
                strength,
                Optional.empty(),
                pressure,
                OptionalInt.empty(),
                List.of(),
                OptionalDouble.empty(),
                OptionalInt.empty()));
    ExitOutcome outcome =
        new ExitOutcome(
            Optional.empty(),
            cause.map(c -> c != RestartCause.NONE),
            cause.orElse(RestartCause.NONE),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            against);
    return new Moment(
        kind,
        at,
        outcome,
        way.map(
            w ->
                new Exit(
                    1,
                    400,
                    at,
                    at.player(),
                    w,
                    worked ? Optional.of(AtCenter.GAINED) : Optional.empty(),
                    outcome,
                    shift)),
        Optional.empty());
  }

  private static Optional<Against> shots(int attempts, int goals) {
    return Optional.of(new Against(attempts, goals, attempts, goals, 0));
  }

  private static String worked(Optional<RestartCause> cause, Optional<Against> against) {
    return new MomentWords(20)
        .sentence(
            moment(
                Moment.Kind.WORKED,
                Optional.of(WayOut.CARRY),
                Strength.SHORTHANDED,
                Optional.of(Pressure.HEAVY),
                OptionalDouble.of(43.6),
                cause,
                against));
  }

  @Test
  void whatWorkedSaysWhatMadeItHardAndWhatIsKnownToHaveFollowed() {
    assertEquals(
        "Carry, shorthanded, under heavy pressure, after 44 s on the ice: gained center, nothing"
            + " against within 20 s.",
        worked(Optional.of(RestartCause.NONE), shots(0, 0)));
    assertEquals(
        "Carry, shorthanded, under heavy pressure, after 44 s on the ice: gained center, no face-off"
            + " in our end.",
        worked(Optional.of(RestartCause.NONE), Optional.empty()));
    assertEquals(
        "Carry, shorthanded, under heavy pressure, after 44 s on the ice: gained center, no attempt"
            + " against within 20 s.",
        worked(Optional.empty(), shots(0, 0)));
    assertEquals(
        "Carry, shorthanded, under heavy pressure, after 44 s on the ice: gained center, what"
            + " followed is not in the sheet.",
        worked(Optional.empty(), Optional.empty()));
  }

  private static String talk(
      Moment.Kind kind, Optional<RestartCause> cause, Optional<Against> against) {
    return new MomentWords(12)
        .sentence(
            moment(
                kind,
                Optional.empty(),
                Strength.EVEN,
                Optional.of(Pressure.NONE),
                OptionalDouble.empty(),
                cause,
                against));
  }

  @Test
  void whatToTalkAboutSaysHowShortItWasAndWhatCameOfIt() {
    assertEquals(
        "Play from outside the zone, under no pressure: let go 3.8 m (12 ft) before the red line, iced"
            + " (written), 2 attempts against within 12 s, 1 goal.",
        talk(Moment.Kind.ICED, Optional.of(RestartCause.ICING_WRITTEN), shots(2, 1)));
    assertEquals(
        "Play from outside the zone, under no pressure: let go 3.8 m (12 ft) before the red line, iced"
            + " (inferred).",
        talk(Moment.Kind.ICED, Optional.of(RestartCause.ICING_INFERRED), shots(0, 0)));
    assertEquals(
        "Play from outside the zone, under no pressure: let go 3.8 m (12 ft) before the red line,"
            + " defensive-zone face-off, cause other, 1 attempt against within 12 s.",
        talk(Moment.Kind.RESTARTED, Optional.of(RestartCause.OTHER), shots(1, 0)));
    assertEquals(
        "Play from outside the zone, under no pressure: let go 3.8 m (12 ft) before the red line, the"
            + " opponent had it next.",
        talk(Moment.Kind.GIVEN_AWAY, Optional.empty(), Optional.empty()));
  }

  @Test
  void aStrengthThatIsNotInTheSheetIsSaid() {
    assertEquals(
        "Chip, strength unknown: let go 3.8 m (12 ft) before the red line, iced (written).",
        new MomentWords(20)
            .sentence(
                moment(
                    Moment.Kind.ICED,
                    Optional.of(WayOut.CHIP),
                    Strength.UNKNOWN,
                    Optional.empty(),
                    OptionalDouble.empty(),
                    Optional.of(RestartCause.ICING_WRITTEN),
                    Optional.empty())));
  }

  /** From 40 s on a shift is long, and of a shorter one nothing is said. */
  @Test
  void aShiftIsSaidFromFortySecondsOn() {
    for (double shift : new double[] {39.9, 40}) {
      assertEquals(
          "Chip"
              + (shift < 40 ? "" : ", after 40 s on the ice")
              + ": let go 3.8 m (12 ft) before the red line, iced (written).",
          new MomentWords(20)
              .sentence(
                  moment(
                      Moment.Kind.ICED,
                      Optional.of(WayOut.CHIP),
                      Strength.EVEN,
                      Optional.empty(),
                      OptionalDouble.of(shift),
                      Optional.of(RestartCause.ICING_WRITTEN),
                      Optional.empty())));
    }
  }
}
