package twostrides.starter;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The part of the map for a sheet that writes zones instead of places.
 *
 * @param sheet the sheet
 * @param found its columns
 * @param words what its rows mean
 */
record Zones(UnknownSheet sheet, Found found, Words words) {
  static final String ZONE = "zone";
  static final String TO_ZONE = "to_zone";
  private static final String OWN = "own";
  private static final String ATTACKING = "attacking";
  private static final Map<String, Pattern> ZONES = zones();

  /** Shots or exits that it takes to tell whose zones they are, and the share of them. Assumed. */
  private static final int LEAST_ROWS = 8;

  private static final double LEAST_SHARE = 0.75;

  private static Map<String, Pattern> zones() {
    Map<String, Pattern> zones = new LinkedHashMap<>();
    zones.put(OWN, Pattern.compile("(?i)(d|dz|def(en[cs]e|ensive|ending)?|own)( ?zone)?"));
    zones.put("neutral", Pattern.compile("(?i)(n|nz|neutral)( ?zone)?"));
    zones.put(
        ATTACKING,
        Pattern.compile("(?i)(o|oz|off(en[cs]e|ensive)?|a|az|att(ack(ing)?)?)( ?zone)?"));
    return zones;
  }

  private static Optional<String> of(String word) {
    return ZONES.entrySet().stream()
        .filter(z -> z.getValue().matcher(word).matches())
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** Whether every word of a column is a zone. */
  static boolean all(Column c) {
    return !c.words().isEmpty() && c.words().keySet().stream().allMatch(w -> of(w).isPresent());
  }

  /** Writes what the words mean, and whose zones they are. */
  void write(StarterText out) {
    for (String ours : List.of(ZONE, TO_ZONE)) {
      found.get(ours).ifPresent(c -> values(ours, c, out));
    }
    String usual = found.tags() ? OWN : ATTACKING;
    List<String> told =
        sheet.rows().stream()
            .filter(this::tells)
            .flatMap(r -> of(found.cell(ZONE, r)).stream())
            .toList();
    long there = told.stream().filter(usual::equals).count();
    out.heading("[place]");
    out.note(
        "No places, but zones: "
            + there
            + " of "
            + told.size()
            + (found.tags() ? " exits" : " shots")
            + " in the "
            + usual
            + " one.");
    if (told.size() < LEAST_ROWS || there < LEAST_SHARE * told.size()) {
      out.question("Whose zones are they: acting_team, home_team, or rink_fixed?");
    }
    out.line("view = \"acting_team\"");
  }

  /** Whether it is known in whose zone such rows lie: a shot, or an exit. */
  private boolean tells(List<String> row) {
    return found.tags()
        ? !found.cell(Tags.WAY_OUT, row).isEmpty()
        : words.actionIn(row).equals(Optional.of("shot"));
  }

  private static void values(String ours, Column c, StarterText out) {
    out.heading("[values." + ours + "]");
    for (String word : c.words().keySet()) {
      out.line(StarterText.key(word) + " = " + StarterText.quoted(of(word).orElseThrow()));
    }
  }
}
