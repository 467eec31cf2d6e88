package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The table of levels in docs/race.md is made from the levels themselves. To write it anew: {@code
 * mvn test -Dtest=RaceGuideTest -Dtwostrides.writeGuides=true}.
 */
class RaceGuideTest {

  private static final Path GUIDE = Path.of("docs/race.md");
  private static final String START = "<!-- table levels -->\n";

  private static String table() {
    StringBuilder out =
        new StringBuilder(
            "| level | what | value | range | unit | source | grade |\n|---|---|---|---|---|---|---|\n");
    for (SkaterLevel level : SkaterLevel.values()) {
      for (Parameter p : level.parameters()) {
        boolean own =
            p.name().equals(level.parameters().get(0).name()) || p.name().contains("sprint");
        if (!own && level != SkaterLevel.ELITE_MEN) {
          continue;
        }
        out.append("| ")
            .append(own ? "`" + level.word() + "`" : "all")
            .append(" | ")
            .append(p.name())
            .append(" | ")
            .append(plain(p.value()))
            .append(" | ")
            .append(plain(p.low()))
            .append(" to ")
            .append(plain(p.high()))
            .append(" | ")
            .append(p.unit())
            .append(" | ")
            .append(p.source())
            .append(" | ")
            .append(p.grade().letter())
            .append(" |\n");
      }
    }
    return out.toString();
  }

  private static String plain(double v) {
    return BigDecimal.valueOf(v)
        .setScale(3, java.math.RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  @Test
  void theGuideShowsTheLevelsAsTheyAre() throws IOException {
    String guide = Files.readString(GUIDE);
    int from = guide.indexOf(START) + START.length();
    int to = guide.indexOf("<!-- end -->", from);
    String made = guide.substring(0, from) + table() + guide.substring(to);
    if (Boolean.getBoolean("twostrides.writeGuides")) {
      Files.writeString(GUIDE, made);
      return;
    }
    assertEquals(made, guide, "docs/race.md differs from the levels; see this test's comment");
  }
}
