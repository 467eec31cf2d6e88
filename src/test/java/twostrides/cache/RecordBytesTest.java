package twostrides.cache;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class RecordBytesTest {

  private enum Colour {
    RED,
    BLUE
  }

  private sealed interface Shape {
    record Circle(double radius) implements Shape {}

    record Named(String name, Optional<Shape> inner) implements Shape {}
  }

  private record Pair(Shape first, Shape second) {}

  private record All(
      List<Shape> shapes,
      Map<String, Integer> counts,
      Optional<Colour> colour,
      OptionalInt whole,
      OptionalDouble number,
      LocalDate day,
      Pair pair) {}

  private record Stranger(int x) {}

  /** A class that checks nothing and is no record. */
  private static final class Tally {
    private final TreeMap<Colour, double[]> sums = new TreeMap<>();
  }

  private record Holder(Tally tally) {}

  private record Anything(Object what) {}

  private static final RecordBytes<All> BYTES = new RecordBytes<>(All.class);

  private static All all() {
    Shape inner = new Shape.Circle(Double.MIN_VALUE);
    Shape named = new Shape.Named("Zo\u00eb \ud83c\udfd2", Optional.of(inner));
    return new All(
        List.of(inner, named, new Shape.Circle(-0.0)),
        Map.of("a", 1, "b", Integer.MIN_VALUE),
        Optional.of(Colour.BLUE),
        OptionalInt.empty(),
        OptionalDouble.of(Double.NaN),
        LocalDate.of(2031, 10, 4),
        new Pair(named, named));
  }

  @Test
  void whatIsReadIsWhatWasWritten() {
    All read = BYTES.read(BYTES.write(all())).orElseThrow();
    assertEquals(all(), read);
    assertSame(read.pair().first(), read.pair().second(), "one object stays one");
    assertSame(read.shapes().get(1), read.pair().first());
  }

  @Test
  void classesThatAreNoRecordsAreTheirFields() {
    Tally tally = new Tally();
    tally.sums.put(Colour.RED, new double[] {1, 2});
    RecordBytes<Holder> bytes = new RecordBytes<>(Holder.class);
    Tally read = bytes.read(bytes.write(new Holder(tally))).orElseThrow().tally();
    assertEquals(List.of(Colour.RED), List.copyOf(read.sums.keySet()));
    assertEquals(2, read.sums.get(Colour.RED)[1]);
  }

  @Test
  void whatTheTypesDoNotSayIsNotWritten() {
    RecordBytes<Anything> bytes = new RecordBytes<>(Anything.class);
    assertThrows(IllegalArgumentException.class, () -> bytes.write(new Anything(new Stranger(1))));
    assertThrows(IllegalArgumentException.class, () -> bytes.write(new Anything(new Thread())));
  }

  /** Bytes of another kind that names types which these records are not made of. */
  @Test
  void whatTheTypesDoNotSayIsNotRead() {
    RecordBytes<Anything> wide = new RecordBytes<>(Anything.class, Stranger.class);
    byte[] stranger = wide.write(new Anything(new Stranger(7)));
    assertEquals(new Anything(new Stranger(7)), wide.read(stranger).orElseThrow());
    assertEquals(Optional.empty(), new RecordBytes<>(Anything.class).read(stranger));
  }

  /** Whatever is read, it ends, and it is records or nothing. */
  @Test
  void damagedBytesAreRecordsOrNothing() {
    byte[] bytes = BYTES.write(all());
    Random random = new Random(20311004);
    int none = 0;
    for (int i = 0; i < 5000; i++) {
      byte[] damaged = bytes.clone();
      for (int k = 0; k <= i % 3; k++) {
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
      }
      none += BYTES.read(damaged).isEmpty() ? 1 : 0;
    }
    assertTrue(none > 500, none + " of 5000 were nothing");
    assertEquals(Optional.empty(), BYTES.read(new byte[0]));
    assertEquals(all(), BYTES.read(bytes).orElseThrow(), "it goes on after damage");
  }
}
