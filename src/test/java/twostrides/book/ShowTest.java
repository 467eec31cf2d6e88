package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.rink.Place;
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
    assertEquals(words, Show.place(Optional.of(new Place(x, across))));
  }

  @Test
  void whatIsMissingIsADash() {
    assertEquals("–", Show.place(Optional.empty()));
    assertEquals("–", Format.metresAndFeet(OptionalDouble.empty()));
    assertEquals("–", Format.video(OptionalDouble.empty()));
  }

  @ParameterizedTest
  @CsvSource({"0, 0:00:00", "59.99, 0:00:59", "3661.2, 1:01:01"})
  void videoTimesAreHoursMinutesSeconds(double seconds, String words) {
    assertEquals(words, Format.video(OptionalDouble.of(seconds)));
  }

  @Test
  void clocksShowThePeriodAndTheTimeLeft() {
    assertEquals("P2 13:07", Format.clock(2, 787.9));
    assertEquals("P1 0:00", Format.clock(1, 0));
  }

  @Test
  void sharesNeedTenTrials() {
    assertEquals("too few to say", Format.share(new Count(9, 9)));
    assertEquals("", Format.interval(new Clustered(new Count(9, 9))));
    assertEquals("none", Format.share(new Count(0, 0)));
    assertEquals("23 %", Format.share(new Count(7, 31)));
    assertEquals("11 to 40 %", Format.interval(new Clustered(new Count(7, 31))));
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
    assertEquals(slug, Links.slug(name));
  }
}
