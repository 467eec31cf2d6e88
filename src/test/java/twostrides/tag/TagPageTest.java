package twostrides.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.SheetForms;
import twostrides.game.Usual;
import twostrides.rink.Rink;

/** The page's own files: their words, their colours, and what they must not hold. */
class TagPageTest {

  @TempDir Path dir;

  private static String file(String name) throws IOException {
    try (InputStream in = TagServer.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static List<String> all(String pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher m = Pattern.compile(pattern).matcher(text);
    while (m.find()) {
      found.add(m.group(1));
    }
    return found;
  }

  /** Every word that the page can choose is one that the reader takes. */
  @Test
  void theWordsOfThePageAreThoseOfTheSheet() throws Exception {
    String html = file("tag.html");
    for (String group :
        List.of("way_out", "at_center", "ended", "pressure", "strength", "net_empty")) {
      List<String> words = all("name=\"" + group + "\" value=\"([^\"]+)\"", html);
      assertTrue(words.size() >= 3, group);
      try (TagDesk desk = TagDesk.open(dir.resolve(group + ".csv"), Usual.DEFAULT, Map.of())) {
        for (String w : words) {
          Map<String, String> fields =
              new HashMap<>(
                  Map.of("period", "1", "clock", "10:00", "team", "A", "way_out", "carry"));
          fields.put(group, w);
          desk.add(fields, "");
        }
        assertEquals(words.size(), desk.tagged());
      }
    }
  }

  /** Each key stands on the page beside the word that the script gives it. */
  @Test
  void theKeysOnThePageAreThoseOfTheScript() throws Exception {
    TreeSet<String> shown = new TreeSet<>();
    Matcher m =
        Pattern.compile("name=\"(\\w+)\" value=\"([^\"]+)\"[^>]*><kbd>(.)</kbd>")
            .matcher(file("tag.html"));
    while (m.find()) {
      shown.add(
          m.group(3).toLowerCase(java.util.Locale.ROOT) + " " + m.group(1) + " " + m.group(2));
    }
    TreeSet<String> known = new TreeSet<>();
    Matcher k = Pattern.compile("(\\w): \\[\"(\\w+)\", \"([a-z -]+)\"\\]").matcher(file("keys.js"));
    while (k.find()) {
      known.add(k.group(1) + " " + k.group(2) + " " + k.group(3));
    }
    assertEquals(shown, known);
    assertEquals(29, shown.size());
  }

  @Test
  void everyColumnOfTheSheetIsKnownToTheReader() {
    TreeSet<String> read = new TreeSet<>(SheetForms.TAG.columnNames());
    // The page writes places, as the acting team sees them.
    read.removeAll(Set.of("home_attacks", "zone"));
    assertEquals(read, new TreeSet<>(TagSheet.OURS));
  }

  @Test
  void nothingRunsButItsOwnScripts() throws Exception {
    String html = file("tag.html");
    assertEquals(
        List.of("tag.js"), all("<script type=\"module\" src=\"([^\"]*)\"></script>", html));
    assertEquals(1, html.split("<script", -1).length - 1);
    assertEquals(List.of(), all("(\\son[a-z]+=)", html));
    assertEquals(List.of(), all("(\\sstyle=)", html));
    StringBuilder scripts = new StringBuilder();
    Set<String> asked = new TreeSet<>(Set.of("tag.js"));
    for (String name : TagServer.SCRIPTS) {
      scripts.append(file(name));
      asked.addAll(all(" from \"\\./([a-z]+\\.js)\";", file(name)));
    }
    assertEquals(new TreeSet<>(TagServer.SCRIPTS), asked);
    String js = scripts.toString();
    assertEquals(js.split("\\bimport\\b", -1).length, js.split("\\bfrom \"\\./", -1).length);
    for (String unsafe :
        List.of(
            "innerHTML",
            "outerHTML",
            "insertAdjacentHTML",
            "document.write",
            "eval(",
            "new Function",
            "http://",
            "https://")) {
      assertFalse(js.replace("http://www.w3.org/2000/svg", "").contains(unsafe), unsafe);
    }
    assertFalse(file("tag.css").contains("url("));
  }

  @Test
  void everyFieldHasALabel() throws Exception {
    String html = file("tag.html");
    List<String> labels = all("<label for=\"([^\"]+)\"", html);
    for (String id : all("<input id=\"([^\"]+)\"", html)) {
      assertTrue(labels.contains(id), id);
    }
    assertTrue(html.contains("role=\"status\" aria-live=\"polite\""));
  }

  /** The rink is drawn to scale: lines where the rink has them, in metres. */
  @Test
  void theRinkIsDrawnFromItsLengths() {
    String svg = RinkSvg.of(Rink.NORTH_AMERICAN);
    assertTrue(svg.contains("data-half-length=\"30.480\" data-half-width=\"12.954\""), svg);
    // The blue line lies 25 ft from center and is 1 ft wide: its middle at 25.5 ft.
    assertTrue(svg.contains("class=\"blueline\" x1=\"-7.772\" x2=\"-7.772\""), svg);
    assertTrue(svg.contains("class=\"goalline\" x1=\"27.127\""), svg);
    assertTrue(RinkSvg.of(Rink.INTERNATIONAL).contains("x=\"-30.000\" y=\"-15.000\""));
  }

  /**
   * Text has a contrast of 4.5 to 1, marks and edges of 3 to 1, in light and in dark. Source: WCAG
   * 2.2, success criteria 1.4.3 and 1.4.11, and its definition of relative luminance.
   */
  @Test
  void coloursCanBeReadInLightAndDark() throws Exception {
    String css = file("tag.css");
    int dark = css.indexOf("@media (prefers-color-scheme: dark)");
    for (String look : List.of(css.substring(0, dark), css.substring(dark))) {
      Map<String, Double> light = new HashMap<>();
      Matcher m = Pattern.compile("--(\\w+): #([0-9a-f]{6})").matcher(look);
      while (m.find()) {
        light.putIfAbsent(m.group(1), luminance(Integer.parseInt(m.group(2), 16)));
      }
      for (String ground : List.of("paper", "card", "wash")) {
        for (String ink : List.of("ink", "soft", "accent", "wrong")) {
          atLeast(4.5, light, ink, ground);
        }
        atLeast(3, light, "edge", ground);
      }
      for (String mark : List.of("accent", "ink", "boards")) {
        atLeast(3, light, mark, "ice");
      }
    }
  }

  private static void atLeast(double least, Map<String, Double> light, String a, String b) {
    double high = Math.max(light.get(a), light.get(b));
    double low = Math.min(light.get(a), light.get(b));
    double contrast = (high + 0.05) / (low + 0.05);
    assertTrue(contrast >= least, a + " on " + b + ": " + contrast);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double c = (channel & 0xff) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
