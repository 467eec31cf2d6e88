package twostrides.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InterruptedIOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

/** How long a request may take until it is heard, and that nothing hurries it after that. */
class WorkersTest {

  private static final long NEVER_MS = TimeUnit.HOURS.toMillis(1);

  private static void await(CountDownLatch latch) {
    try {
      assertTrue(latch.await(5, TimeUnit.MINUTES));
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aRequestThatIsNotHeardInTimeIsDropped() {
    CountDownLatch dropped = new CountDownLatch(1);
    AtomicReference<Exception> late = new AtomicReference<>();
    try (Workers workers = new Workers(50)) {
      workers.execute(
          () -> {
            while (!Thread.currentThread().isInterrupted()) {
              Thread.onSpinWait();
            }
            late.set(assertThrows(InterruptedIOException.class, workers::heard));
            assertFalse(Thread.currentThread().isInterrupted());
            dropped.countDown();
          });
      await(dropped);
    }
    assertEquals("the request took too long", late.get().getMessage());
  }

  @Test
  void ofTooManyTheOldestGiveWayButNoneThatIsHeard() {
    CountDownLatch end = new CountDownLatch(1);
    AtomicInteger dropped = new AtomicInteger();
    CountDownLatch ten = new CountDownLatch(10);
    CountDownLatch first = new CountDownLatch(1);
    CountDownLatch ended = new CountDownLatch(1);
    AtomicReference<Exception> hurried = new AtomicReference<>();
    try (Workers workers = new Workers(NEVER_MS)) {
      // The oldest of all is heard: an interrupt would close the journal that it writes.
      workers.execute(
          () -> {
            try {
              workers.heard();
              first.countDown();
              end.await();
            } catch (InterruptedException | InterruptedIOException e) {
              hurried.set(e);
            }
            ended.countDown();
          });
      await(first);
      for (int i = 0; i < 74; i++) {
        workers.execute(
            () -> {
              try {
                end.await();
              } catch (InterruptedException e) {
                dropped.incrementAndGet();
                ten.countDown();
              }
            });
      }
      await(ten);
      CountDownLatch heard = new CountDownLatch(1);
      workers.execute(heard::countDown);
      await(heard);
      end.countDown();
      await(ended);
    }
    assertNull(hurried.get());
    // The one that was heard last made way for itself.
    assertTrue(dropped.get() == 10 || dropped.get() == 11, dropped + " dropped");
  }
}
