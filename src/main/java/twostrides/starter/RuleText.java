package twostrides.starter;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The part of the map that says what the sheet's words mean. */
final class RuleText {
  private final UnknownSheet sheet;
  private final Found found;
  private final Words words;
  private final Targets targets;
  private final StarterText out;

  RuleText(UnknownSheet sheet, Found found, Words words, Targets targets, StarterText out) {
    this.sheet = sheet;
    this.found = found;
    this.words = words;
    this.targets = targets;
    this.out = out;
  }

  void write() {
    if (words.action().isEmpty()) {
      out.line("");
      out.question("No column says what a row is (pass, shot, face-off...). Write rules for it:");
      out.note("[[rules]]");
      out.note("when = { Event = \"Pass\" }");
      out.note("set = { action = \"pass\", outcome = \"complete\" }");
      return;
    }
    if (words.ours()) {
      return;
    }
    Column action = words.action().get();
    out.line("");
    out.note(action.header() + " says what a row is: " + action.words().size() + " words.");
    for (Words.Line line : words.lines()) {
      rule(line);
    }
  }

  private void rule(Words.Line line) {
    out.line("");
    String word = line.when().values().iterator().next();
    if (line.action().isEmpty()) {
      out.question(
          "What is "
              + StarterText.quoted(word)
              + " ("
              + line.rows()
              + " rows)? Until somebody says, it is not used.");
    }
    if (line.note().endsWith("?")) {
      out.question(line.note());
    } else if (!line.note().isEmpty()) {
      out.note(line.note());
    }
    Map<String, String> when = new LinkedHashMap<>();
    line.when().forEach((k, v) -> when.put(k, StarterText.quoted(v)));
    out.line("[[rules]]");
    out.line("when = " + StarterText.inline(when));
    if (line.action().isEmpty()) {
      out.line("skip = " + StarterText.quoted(word + ": nobody has said what it is"));
      return;
    }
    Map<String, String> set = new LinkedHashMap<>();
    set.put("action", StarterText.quoted(line.action().get()));
    line.outcome().ifPresent(o -> set.put("outcome", StarterText.quoted(o)));
    if (targets.byRule() && targets.counts(line)) {
      for (String ours : List.of("to_x_m", "to_y_m")) {
        String header = found.get(ours).orElseThrow().header();
        set.put(ours, "{ column = " + StarterText.quoted(header) + " }");
      }
    }
    if (Manpower.turnedWords(sheet, found, words).contains(word)) {
      out.note("Such rows write manpower the other way round than the rows beside them.");
      set.putAll(Manpower.of(sheet, found, found.manpower().orElseThrow()).cells(true));
    }
    out.line("set = " + StarterText.inline(set));
  }
}
