package twostrides.book;

import twostrides.findings.Advice;
import twostrides.stats.Clustered;

/** One sentence of advice to a player, with its numbers. */
public final class AdviceWords {

  private static final String OUT = "of the pucks carried or passed out, ";
  private static final String SHORT = "were sent before the red line";

  private AdviceWords() {}

  /**
   * The sentence.
   *
   * @param a what to tell him
   */
  public static String sentence(Advice a) {
    return switch (a.rule()) {
      case TOO_FEW ->
          "Too few to say: "
              + Format.count(a.attempts(), "exit attempt")
              + " in these sheets. Watch "
              + instead(a);
      case OFTEN_ICED ->
          "Look at how it is let go: of the pucks sent before the red line, "
              + said(
                  Format.withInterval(a.iced().own().total(), a.icedRate()),
                  "were iced",
                  a.iced().rest())
              + ".";
      case OFTEN_SHORT ->
          "Take it to center more often: " + OUT + said(a.releasedShort(), SHORT) + ".";
      case OFTEN_KEPT_IN ->
          "Get it out while there is room: of the attempts under no or light pressure, "
              + said(a.keptIn(), "were failed clears")
              + ".";
      case FLAGS ->
          (a.flagged().successes() == 1 ? "Look at one clip: " : "Gain center first: ")
              + "in "
              + a.flagged().successes()
              + " of "
              + Format.count(a.flagged().trials(), "icing")
              + " whose skaters' places and speeds are known there was likely time to gain the red"
              + " line first.";
      case AFTER_PENALTY ->
          "Know when the penalty is over: of "
              + Format.count(a.late().trials(), "puck")
              + " sent before the red line within "
              + Math.round(Advice.JUST_AFTER)
              + " s after it, "
              + a.late().successes()
              + (a.late().successes() == 1 ? " was" : " were")
              + " iced.";
      case SELDOM_SHORT ->
          "Keep taking it to center: " + OUT + said(a.releasedShort(), SHORT) + ".";
      case NOTHING ->
          a.releasedShort().tooFew()
              ? "Nothing stands out; with "
                  + Format.counts(a.releasedShort().own().total())
                  + " pucks carried or passed out sent before the red line it is too few to say"
                  + " more."
              : "Nothing stands out: " + OUT + said(a.releasedShort(), SHORT) + ".";
    };
  }

  private static String instead(Advice a) {
    return a.flagged().successes() > 0
        ? Format.count(a.flagged().successes(), "flagged release") + " instead: was center open?"
        : a.clips() > 0
            ? Format.count(a.clips(), "clip") + " instead, below."
            : "the next games instead.";
  }

  private static String said(Advice.Pair pair, String were) {
    return said(Format.withInterval(pair.own()), were, pair.rest());
  }

  private static String said(String share, String were, Clustered rest) {
    return share + " " + were + "; in the rest of the team " + Format.withInterval(rest);
  }
}
