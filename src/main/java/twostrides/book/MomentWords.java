package twostrides.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import twostrides.exits.Against;
import twostrides.exits.AtCenter;
import twostrides.exits.Exit;
import twostrides.exits.ExitOutcome;
import twostrides.exits.Release;
import twostrides.exits.RestartCause;
import twostrides.exits.Situation;
import twostrides.exits.WayOut;
import twostrides.findings.MarkOutcome;
import twostrides.findings.Moment;
import twostrides.game.Pressure;
import twostrides.game.Strength;
import twostrides.season.Flag;

/**
 * What happened in a moment of a player, in a sentence: the way out, what made it hard, how short,
 * what came of it.
 *
 * @param window seconds in which restarts, attempts and goals counted
 */
public record MomentWords(double window) {

  /** The sentence. */
  public String sentence(Moment m) {
    String said =
        String.join(", ", circumstances(m))
            + ": "
            + (m.kind() == Moment.Kind.WORKED ? worked(m) : talk(m))
            + ".";
    return m.flag().map(f -> said + " " + flag(f)).orElse(said);
  }

  /** An exit attempt in a sentence, whatever came of it. */
  String exit(Exit e) {
    String what =
        e.way() == WayOut.KEPT_IN
            ? ""
            : e.mark()
                .map(m -> m == AtCenter.GAINED ? "gained center, " : m.label() + ", ")
                .orElse("");
    return any(e.at(), e.outcome(), Optional.of(e), what);
  }

  /** A puck sent before the red line in a sentence, whatever came of it. */
  String release(Release r) {
    return any(r.at(), r.outcome(), r.exit(), shortOfCenter(r.at()) + ", ");
  }

  private String any(Situation at, ExitOutcome outcome, Optional<Exit> exit, String what) {
    Moment m = new Moment(Moment.Kind.WORKED, at, outcome, exit, Optional.empty());
    String came =
        switch (MarkOutcome.of(outcome)) {
          case ICED -> iced(outcome);
          case OTHER_RESTART -> "defensive-zone face-off, cause " + outcome.cause().label();
          case OPPONENT_NEXT -> "the opponent had it next";
          case OWN_NEXT -> "the own team had it next";
          case STOPPED -> "then play stopped, or the sheet does not say";
        };
    return String.join(", ", circumstances(m)) + ": " + what + came + against(m) + ".";
  }

  private static String iced(ExitOutcome outcome) {
    return outcome.cause() == RestartCause.ICING_INFERRED ? "iced (inferred)" : "iced (written)";
  }

  private static String shortOfCenter(Situation at) {
    return "let go "
        + Format.metresAndFeet(at.where().shortOfCenter())
        + " before the red line"
        + at.where().lineNote().map(n -> " (" + n + ")").orElse("");
  }

  private static List<String> circumstances(Moment m) {
    List<String> parts = new ArrayList<>();
    parts.add(
        m.exit()
            .map(e -> capital(e.way() == WayOut.KEPT_IN ? Show.way(e) : e.way().label()))
            .orElse("Play from outside the zone"));
    if (m.at().state().strength() != Strength.EVEN) {
      parts.add(Format.phrase(m.at().state().strength()));
    }
    m.at()
        .state()
        .pressure()
        .ifPresent(p -> parts.add("under " + (p == Pressure.NONE ? "no" : p.word()) + " pressure"));
    if (m.longShift()) {
      parts.add("after " + Math.round(m.shift().orElseThrow()) + " s on the ice");
    }
    return parts;
  }

  private static String capital(String way) {
    return way.substring(0, 1).toUpperCase(Locale.ROOT) + way.substring(1);
  }

  private String worked(Moment m) {
    boolean restarts = m.outcome().restarted().isPresent();
    boolean attempts = m.outcome().against().isPresent();
    return "gained center, "
        + (attempts && restarts
            ? "nothing against within " + seconds()
            : attempts
                ? "no attempt against within " + seconds()
                : restarts ? "no face-off in our end" : "what followed is not in the sheet");
  }

  private String talk(Moment m) {
    String came =
        switch (m.kind()) {
          case GIVEN_AWAY -> "the opponent had it next";
          case RESTARTED -> "defensive-zone face-off, cause " + m.outcome().cause().label();
          case WORKED, FLAGGED, ICED -> iced(m.outcome());
        };
    return shortOfCenter(m.at()) + ", " + came + against(m);
  }

  private String against(Moment m) {
    int attempts = m.outcome().against().map(Against::attempts).orElse(0);
    int goals = m.outcome().against().map(Against::goals).orElse(0);
    return attempts == 0
        ? ""
        : ", "
            + Format.count(attempts, "attempt")
            + " against within "
            + seconds()
            + (goals == 0 ? "" : ", " + Format.count(goals, "goal"));
  }

  private String seconds() {
    return Math.round(window) + " s";
  }

  private static String flag(Flag f) {
    return "Flagged: to gain center "
        + Format.withInterval(f.assessment().gain().chance())
        + " ("
        + f.assessment().gain().evidence().word()
        + ").";
  }
}
