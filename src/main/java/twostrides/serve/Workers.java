package twostrides.serve;

import java.io.Closeable;
import java.io.InterruptedIOException;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * The threads that answer, one a request, and how long a request may take until it is heard: read
 * to its end, with the token. Whoever holds connections open can so neither use up the threads nor
 * keep the page waiting: a request that takes too long is dropped, and of too many at once the
 * oldest.
 *
 * <p>To drop a request is to interrupt its thread, which closes its connection; once a request is
 * heard that never happens, since it would close the journal, too.
 */
final class Workers implements Executor, Closeable {

  /** Requests that may wait to be heard at once; a browser sends six. Assumed. */
  private static final int MOST = 64;

  private final ExecutorService threads = Executors.newCachedThreadPool(Workers::thread);
  private final Timer watch = new Timer("page", true);
  private final long patience;

  /** Threads whose request is not yet heard, with the instant of its beginning; oldest first. */
  private final Map<Thread, Long> unheard = new LinkedHashMap<>();

  /**
   * Threads.
   *
   * @param patienceMs milliseconds in which a request has to be heard
   */
  Workers(long patienceMs) {
    this.patience = TimeUnit.MILLISECONDS.toNanos(patienceMs);
    long every = Math.max(1, patienceMs / 10);
    TimerTask look =
        new TimerTask() {
          @Override
          public void run() {
            dropOld();
          }
        };
    watch.schedule(look, every, every);
  }

  @Override
  public void execute(Runnable request) {
    threads.execute(
        () -> {
          begin();
          try {
            request.run();
          } finally {
            end();
          }
        });
  }

  /**
   * The request of this thread is heard: it may take as long as it needs.
   *
   * @throws InterruptedIOException when it was dropped just before
   */
  void heard() throws InterruptedIOException {
    end();
    if (Thread.interrupted()) {
      throw new InterruptedIOException("the request took too long");
    }
  }

  private void begin() {
    synchronized (unheard) {
      unheard.put(Thread.currentThread(), System.nanoTime());
      if (unheard.size() > MOST) {
        drop(unheard.keySet().iterator());
      }
    }
  }

  private void end() {
    synchronized (unheard) {
      unheard.remove(Thread.currentThread());
    }
  }

  private void dropOld() {
    synchronized (unheard) {
      long now = System.nanoTime();
      while (!unheard.isEmpty() && now - unheard.values().iterator().next() > patience) {
        drop(unheard.keySet().iterator());
      }
    }
  }

  private static void drop(Iterator<Thread> oldest) {
    oldest.next().interrupt();
    oldest.remove();
  }

  /** Takes no more requests; those that are heard are answered to their end. */
  @Override
  public void close() {
    watch.cancel();
    threads.shutdown();
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "page");
    thread.setDaemon(true);
    return thread;
  }
}
