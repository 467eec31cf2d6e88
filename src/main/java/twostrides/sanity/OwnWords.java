package twostrides.sanity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.game.Action;
import twostrides.game.SheetForms;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetMaps;

/** A sheet's word that is one of our actions is read as that action. */
final class OwnWords {

  private static final Set<String> ACTIONS =
      Stream.of(Action.values()).map(Action::word).collect(Collectors.toSet());

  private OwnWords() {}

  static List<Doubt> of(SheetMaps maps) {
    List<Doubt> doubts = new ArrayList<>();
    for (SheetMap map : maps.maps()) {
      if (map.schema().equals(SheetForms.PLAY)) {
        map.readAs("action").forEach((word, as) -> doubts.addAll(of(map, word, as)));
      }
    }
    return doubts;
  }

  private static List<Doubt> of(SheetMap map, String word, Set<String> as) {
    String own = word.toLowerCase(Locale.ROOT);
    if (!ACTIONS.contains(own) || as.contains(own)) {
      return List.of();
    }
    return List.of(
        Doubt.warn(
            map.name(),
            "\"" + word + "\" read as " + String.join(", ", as),
            "action = \"" + own + "\", as there is such an action",
            "Correct the action in the sheet map, unless the sheet means something else by its word."));
  }
}
