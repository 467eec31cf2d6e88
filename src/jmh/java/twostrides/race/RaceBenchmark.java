package twostrides.race;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import twostrides.rink.Rink;
import twostrides.rulebook.Bookshelf;

/** 2,000 simulations of a race of ten skaters, hybrid icing, places known or simulated too. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RaceBenchmark {

  private static final int SIMULATIONS = 2000;

  private final RaceModel known = model(ten());
  private final RaceModel placed = model(List.of());
  private long seed;

  private static List<Racer> ten() {
    List<Racer> ten = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      ten.add(new Racer(true, -14 + 3 * i, -8 + 4 * i, 5, 0));
      ten.add(new Racer(false, 2 + 3 * i, 9 - 4 * i, 2, 1));
    }
    return ten;
  }

  private static RaceModel model(List<Racer> racers) {
    return new RaceModel(
        new Scene(
            Rink.NORTH_AMERICAN,
            -6,
            5,
            Delivery.SENT,
            OptionalDouble.empty(),
            racers,
            SkaterSet.of(SkaterLevel.ELITE_MEN)),
        Bookshelf.book("hybrid").raceQuestion());
  }

  /** Ten skaters whose places are known. */
  @Benchmark
  public RaceChances knownPlaces() {
    return known.run(new SeededRandom(seed++, "release"), SIMULATIONS);
  }

  /** Ten skaters whose places are simulated too. */
  @Benchmark
  public RaceChances simulatedPlaces() {
    return placed.run(new SeededRandom(seed++, "release"), SIMULATIONS);
  }
}
