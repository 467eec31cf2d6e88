package twostrides.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every input of the torture corpus, spoilt by a seeded hand: bytes flipped, cut, doubled, taken
 * from elsewhere. The same on every machine; {@code -Dtwostrides.mutations=N} for more.
 * DEVELOPERS.md says how the same targets are fuzzed with coverage as a guide.
 */
class SeededMutationsTest {

  private static final int TIMES = Integer.getInteger("twostrides.mutations", 400);

  /** Longer inputs of the corpus are about length, and slow. */
  private static final int LONGEST = 3000;

  private static final List<String> PIECES =
      List.of(
          "\"",
          ",",
          ";",
          "\n",
          "\r",
          "\0",
          "\uFEFF",
          "NaN",
          "1e400",
          "-1",
          "9999999999999",
          "[[",
          "]",
          "{",
          "=",
          "'''",
          "\\u0000",
          "\u0308",
          "\uD83E\uDD9D",
          "true",
          "inf",
          "20:00");

  static List<byte[]> seeds(FuzzTarget target) throws IOException {
    List<byte[]> seeds = new ArrayList<>();
    for (TortureCase c : TortureCase.all()) {
      byte[] sheet = TortureCase.bytes(c.sheet());
      byte[] extra = TortureCase.bytes(c.extra());
      if (sheet.length + extra.length <= LONGEST) {
        switch (target) {
          case SHEET_AND_MAP -> seeds.add(FuzzTarget.joined(extra, sheet));
          case STREAM -> seeds.add(sheet);
          case RULEBOOK -> take(c, seeds, extra, n -> n.startsWith("rulebook"));
          case LEVEL -> take(c, seeds, extra, n -> n.startsWith("level"));
          case TRACKING -> take(c, seeds, extra, n -> n.startsWith("tracking"));
          case SYNC -> take(c, seeds, extra, n -> n.startsWith("sync"));
          case PLACES -> take(c, seeds, extra, n -> n.startsWith("places"));
          case TRACKING_MAP -> take(c, seeds, extra, n -> n.startsWith("map"));
          case JOURNAL, REQUESTS -> {}
        }
      }
    }
    if (target == FuzzTarget.JOURNAL) {
      seeds.add(
          bytes(
              "[\"begin\"]\n[\"begun\",\"none\"]\n[\"setup\",\"home\",\"Herons\"]\n"
                  + "[\"add\",\"1\",\"period\",\"1\",\"clock\",\"19:00\",\"team\",\"Herons\",\"way_out\",\"chip\"]\n"
                  + "[\"edit\",\"1\",\"period\",\"1\",\"clock\",\"18:00\",\"team\",\"Herons\",\"way_out\",\"carry\"]\n"
                  + "[\"delete\",\"1\"]\n[\"undo\",\"3\"]\n[\"undo\"]\n[\"written\",\"x\"]\n[\"add\",\"2"));
    }
    if (target == FuzzTarget.REQUESTS) {
      String add =
          "{\"page\":\"a\",\"period\":\"1\",\"clock\":\"19:00\",\"team\":\"Herons\",\"way_out\":\"chip\"}\n";
      seeds.add(
          bytes(
              ("b" + add).repeat(2)
                  + "c{\"page\":\"a\",\"id\":\"1\",\"version\":\"1\",\"way_out\":\"carry\"}\n"
                  + "d{\"page\":\"a\",\"id\":\"2\",\"version\":\"2\"}\ne{\"page\":\"a\"}\n"
                  + "f{\"home\":\"Herons\",\"away\":\"Wolves\"}\ng{}\n"));
    }
    return seeds;
  }

  private static void take(TortureCase c, List<byte[]> seeds, byte[] of, Predicate<String> whose) {
    if (whose.test(c.name())) {
      seeds.add(of);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] spoilt(byte[] seed, Random random) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int from = seed.length == 0 ? 0 : random.nextInt(seed.length);
    int length = seed.length == 0 ? 0 : random.nextInt(1 + Math.min(40, seed.length - from));
    int at = seed.length == 0 ? 0 : random.nextInt(seed.length);
    out.write(seed, 0, at);
    switch (random.nextInt(6)) {
      case 0 -> out.write(random.nextInt(256));
      case 1 -> out.write(seed, from, length);
      case 2 -> at += Math.min(length, seed.length - at);
      case 3 -> out.writeBytes(bytes(PIECES.get(random.nextInt(PIECES.size()))));
      case 4 -> {
        out.writeBytes(bytes(PIECES.get(random.nextInt(PIECES.size()))));
        at += Math.min(1 + random.nextInt(5), seed.length - at);
      }
      default -> at = Math.max(0, at - length);
    }
    out.write(seed, at, seed.length - at);
    return out.toByteArray();
  }

  @ParameterizedTest
  @EnumSource
  @Timeout(120)
  void nothingThatIsSpoiltGetsThrough(FuzzTarget target) throws Exception {
    Random random = new Random(20311004);
    List<byte[]> seeds = seeds(target);
    // Requests wait for the disk, some dozen times an input.
    int times = target == FuzzTarget.REQUESTS ? Math.max(1, TIMES / 10) : TIMES;
    for (int i = 0; i < times; i++) {
      byte[] data = seeds.get(random.nextInt(seeds.size()));
      for (int n = 1 + random.nextInt(4); n > 0; n--) {
        data = spoilt(data, random);
      }
      try {
        target.give(data);
      } catch (Exception | AssertionError | StackOverflowError e) {
        throw new AssertionError(
            target + ", input " + i + ": " + new String(data, StandardCharsets.ISO_8859_1), e);
      }
    }
  }
}
