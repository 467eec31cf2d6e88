package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** Words of single cells. */
class ShowTest {

  @ParameterizedTest
  @CsvSource({
    "-9.75, 4.5, '9.8 m (32 ft) before center, 4.5 m (15 ft) right'",
    "-0.3048, 0.1, '0.3 m (1 ft) before center, middle'",
    "3.0, 6.0, '3.0 m (10 ft) past center, 6.0 m (20 ft) left'"
  })
  void placesAreSaidInMetresAndFeet(double x, double y, String words) {
    double across = words.endsWith("right") ? -y : y;
    assertEquals(words, Show.place(x, across));
  }

  @Test
  void whatIsMissingIsADash() {
    assertEquals("–", Show.place(OptionalDouble.empty(), OptionalDouble.of(1)));
    assertEquals("–", Show.metresAndFeet(OptionalDouble.empty()));
    assertEquals("–", Show.video(OptionalDouble.empty()));
  }

  @ParameterizedTest
  @CsvSource({"0, 0:00:00", "59.99, 0:00:59", "3661.2, 1:01:01"})
  void videoTimesAreHoursMinutesSeconds(double seconds, String words) {
    assertEquals(words, Show.video(OptionalDouble.of(seconds)));
  }

  @Test
  void clocksShowThePeriodAndTheTimeLeft() {
    assertEquals("P2 13:07", Show.clock(2, 787.9));
    assertEquals("P1 0:00", Show.clock(1, 0));
  }

  @Test
  void sharesNeedTenTrials() {
    assertEquals("too few to say", Show.share(new Count(9, 9)));
    assertEquals("", Show.interval(new Clustered(new Count(9, 9))));
    assertEquals("none", Show.share(new Count(0, 0)));
    assertEquals("23 %", Show.share(new Count(7, 31)));
    assertEquals("11 to 40 %", Show.interval(new Clustered(new Count(7, 31))));
  }

  @ParameterizedTest
  @CsvSource({
    "17 Noor Vance, 17-noor-vance",
    "../../etc/passwd, etc-passwd",
    "Côté Ÿlmaz, cote-ylmaz",
    "CON, con",
    "'<>', x",
    "'---', x"
  })
  void slugsAreplainLetters(String name, String slug) {
    assertEquals(slug, Show.slug(name));
  }
}
