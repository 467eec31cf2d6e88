package twostrides.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A ruling in plain words. */
public final class RulingWords {
  private RulingWords() {}

  /**
   * The ruling in one sentence, without what follows: "Icing, unless the goalkeeper moved toward
   * the puck."
   *
   * @param r the ruling
   */
  public static String sentence(Ruling r) {
    if (r instanceof Ruling.NotYetDecided n) {
      List<String> ifs = new ArrayList<>();
      List<String> unlesses = new ArrayList<>();
      for (Ruling.Open o : n.open()) {
        (o.settles().startsWith("unless ") ? unlesses : ifs).add(o.settles());
      }
      String all =
          joined(ifs, "if ")
              + (ifs.isEmpty() || unlesses.isEmpty() ? "" : ", ")
              + joined(unlesses, "unless ");
      return "Not yet decided: icing, " + all + ".";
    }
    return capital(r.word()) + ": " + r.reason().text() + " (" + r.reason().cite() + ").";
  }

  /** "unless a or b", the opening word once. */
  private static String joined(List<String> parts, String opening) {
    if (parts.isEmpty()) {
      return "";
    }
    List<String> bare =
        parts.stream()
            .map(p -> p.startsWith(opening) ? p.substring(opening.length()) : p)
            .collect(Collectors.toList());
    String word = opening.equals("if ") ? " and " : " or ";
    String first = parts.get(0).startsWith(opening) ? opening : "";
    return first + String.join(word, bare);
  }

  /**
   * The ruling and all that follows from it, one line each.
   *
   * @param r the ruling
   */
  public static List<String> lines(Ruling r) {
    List<String> lines = new ArrayList<>();
    lines.add(sentence(r));
    if (r instanceof Ruling.NotYetDecided n) {
      for (Ruling.Open o : n.open()) {
        List<String> words = o.fact().facts().filter(f -> !f.unknown()).map(Fact::word).toList();
        lines.add(
            "  %s would settle it: %s (%s)"
                .formatted(o.fact().option(), String.join(", ", words), o.reason().cite()));
      }
    }
    r.faceOff().ifPresent(d -> faceOff(d, lines));
    return lines;
  }

  /**
   * The assumed settings on which a ruling hangs, one line each.
   *
   * @param book the book
   * @param facts the situation
   */
  public static List<String> assumptions(IcingBook book, Facts facts) {
    return Judge.assumptions(book, facts).entrySet().stream()
        .map(a -> assumption(a.getKey(), a.getValue()))
        .toList();
  }

  private static String assumption(Setting s, String instead) {
    return "Assumed, no source found: " + s.key().word() + " = " + s.value() + "; " + instead + ".";
  }

  private static void faceOff(FaceOff d, List<String> lines) {
    String spot = d.spot().words().isEmpty() ? "" : "; " + d.spot().words();
    lines.add("Face-off: " + d.place().words() + spot + cite(d, FaceOffRules.PLACE) + ".");
    if (d.reasons().size() > 1) {
      lines.add(capital(d.change().words()) + cite(d, FaceOffRules.CHANGE) + ".");
      lines.add("Time-out: " + d.timeOut().words() + cite(d, FaceOffRules.TIME_OUT) + ".");
    }
  }

  private static String cite(FaceOff d, String rule) {
    return d.reasons().stream()
        .filter(r -> r.rule().equals(rule))
        .map(r -> " (" + r.cite() + ")")
        .findFirst()
        .orElse("");
  }

  private static String capital(String s) {
    return s.substring(0, 1).toUpperCase(Locale.ROOT) + s.substring(1);
  }
}
