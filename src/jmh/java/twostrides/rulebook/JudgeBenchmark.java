package twostrides.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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

/** Rulings a second on one core, over situations drawn with a seed and every book in turn. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class JudgeBenchmark {

  private static final int SITUATIONS = 1024;

  private final List<IcingBook> books = Bookshelf.ids().stream().map(Bookshelf::book).toList();
  private final List<Facts> situations = situations();
  private int next;

  private static List<Facts> situations() {
    Random dice = new Random(81);
    List<Facts> all = new ArrayList<>();
    for (int i = 0; i < SITUATIONS; i++) {
      Facts f = Facts.NONE;
      for (FactKey k : FactKey.values()) {
        // The usual word half of the time, so that rulings go deep into the rules.
        String word =
            dice.nextBoolean() ? k.unsaid().word() : k.words().get(dice.nextInt(k.words().size()));
        f = f.with(k, word);
      }
      all.add(f);
    }
    return all;
  }

  /** One ruling with its draw and reasons. */
  @Benchmark
  public Ruling ruling() {
    next++;
    return Judge.judge(books.get(next % books.size()), situations.get(next % SITUATIONS));
  }
}
