package twostrides.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import twostrides.exits.RestartCause;
import twostrides.review.FlagLine;
import twostrides.review.Moment;
import twostrides.review.Say;
import twostrides.review.ShownStrength;

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

  private static List<String> circumstances(Moment m) {
    List<String> parts = new ArrayList<>();
    parts.add(m.way().map(MomentWords::capital).orElse("Play from outside the zone"));
    if (m.strength() != ShownStrength.EVEN) {
      parts.add(m.strength().phrase());
    }
    m.pressure().ifPresent(p -> parts.add("under " + (p.equals("none") ? "no" : p) + " pressure"));
    if (m.longShift()) {
      parts.add("after " + Math.round(m.shift().orElseThrow()) + " s on the ice");
    }
    return parts;
  }

  private static String capital(String way) {
    return way.substring(0, 1).toUpperCase(Locale.ROOT) + way.substring(1);
  }

  private String worked(Moment m) {
    boolean restarts = m.cause().isPresent();
    boolean attempts = m.attemptsAgainst().isPresent();
    return "gained center, "
        + (attempts && restarts
            ? "nothing against within " + seconds()
            : attempts
                ? "no attempt against within " + seconds()
                : restarts ? "no restart" : "what followed is not in the sheet");
  }

  private String talk(Moment m) {
    String came =
        switch (m.kind()) {
          case GIVEN_AWAY -> "the opponent had it next";
          case RESTARTED -> "own-zone restart, cause " + m.cause().orElse("unknown");
          case WORKED, FLAGGED, ICED ->
              m.cause().equals(Optional.of(RestartCause.ICING_INFERRED.label()))
                  ? "iced (inferred)"
                  : "iced (written)";
        };
    return "let go "
        + Show.metresAndFeet(m.shortOfCenter())
        + " short of center"
        + m.lineNote().map(n -> " (" + n + ")").orElse("")
        + ", "
        + came
        + against(m);
  }

  private String against(Moment m) {
    if (m.attemptsAgainst().orElse(0) == 0) {
      return "";
    }
    int goals = m.goalsAgainst().orElse(0);
    return ", "
        + Say.count(m.attemptsAgainst().orElseThrow(), "attempt")
        + " against within "
        + seconds()
        + (goals == 0 ? "" : ", " + Say.count(goals, "goal"));
  }

  private String seconds() {
    return Math.round(window) + " s";
  }

  private static String flag(FlagLine f) {
    return "Flagged: to gain center " + Show.chance(f.gain()) + " (" + f.evidence().word() + ").";
  }
}
