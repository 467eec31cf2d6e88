package twostrides.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.json.Json;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.http.ClientConfig;

/**
 * A real browser without a window, as if new. Where neither Chromium nor Chrome is installed with
 * its driver, tests that need one are skipped and say so, or fail where {@code
 * -Dtwostrides.browser=required} is set.
 */
public final class Browser implements AutoCloseable {

  private static final List<String> BROWSERS =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");

  /** Millimetres in an inch, in which paper is asked for. */
  private static final double INCH = 25.4;

  /**
   * How long to wait for a page, its scripts and what it shall show. A page that hangs fails a test
   * all the same; a machine that is many times slower, or busy, does not.
   */
  static final Duration PATIENCE = Duration.ofMinutes(5);

  /** What a page may ask for: files, what stands in the page itself, this machine. */
  private static final Pattern HERE =
      Pattern.compile(
          "(file|data|blob|about|chrome|devtools):|https?://(127\\.0\\.0\\.1|localhost)[:/]");

  /** Selenium warns of a newer browser's protocol, and of a browser that was killed. */
  private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

  /** A site of this machine. */
  private static final Pattern SERVED = Pattern.compile("https?://[^/]+");

  /**
   * Programs that wait for the next test of this process: starting one takes two seconds of a
   * processor. Each test gets a tab of its own, and what it left behind is cleared.
   */
  private static final Deque<Started> IDLE = new ConcurrentLinkedDeque<>();

  /** A program that runs, with a first tab that stays empty. */
  private record Started(Path profile, ChromeDriver driver, String empty) {}

  private final Started started;
  private final ChromeDriver driver;
  private final List<String> errors = new ArrayList<>();
  private final List<String> requests = new ArrayList<>();

  private Browser(Started started) {
    this.started = started;
    this.driver = started.driver();
  }

  /**
   * Opens a browser, or skips the test where there is none.
   *
   * @param width width of the page in pixels
   * @param height height of the page in pixels
   */
  public static Browser open(int width, int height) throws IOException {
    Started idle = IDLE.poll();
    Browser opened = new Browser(idle == null ? start() : idle);
    opened.driver.switchTo().newWindow(WindowType.TAB);
    opened.size(width, height);
    return opened;
  }

  private static Started start() throws IOException {
    Optional<Path> browser = installed(BROWSERS);
    Optional<Path> driver = installed(List.of("chromedriver"));
    if (browser.isEmpty() || driver.isEmpty()) {
      String absent = "no Chromium or Chrome with chromedriver on the PATH";
      if (System.getProperty("twostrides.browser", "").equals("required")) {
        fail(absent + ", and -Dtwostrides.browser=required");
      }
      System.err.println("SKIPPED: " + absent);
      assumeTrue(false, absent);
    }
    SELENIUM.setLevel(Level.SEVERE);
    Path profile = Files.createTempDirectory("two-strides-browser");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser.orElseThrow().toFile());
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--autoplay-policy=no-user-gesture-required",
        "--user-data-dir=" + profile);
    File executable = driver.orElseThrow().toFile();
    ChromeDriver opened =
        new ChromeDriver(
            new ChromeDriverService.Builder().usingDriverExecutable(executable).build(),
            options,
            ClientConfig.defaultConfig().readTimeout(PATIENCE.plusMinutes(1)));
    opened.manage().timeouts().scriptTimeout(PATIENCE).pageLoadTimeout(PATIENCE);
    Started started = new Started(profile, opened, opened.getWindowHandle());
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  if (Files.exists(profile)) {
                    quit(started);
                  }
                }));
    return started;
  }

  private static Optional<Path> installed(List<String> names) {
    return names.stream()
        .flatMap(
            n ->
                Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                    .map(d -> Path.of(d, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Selenium's own handle, for what has no shorter way here. */
  public ChromeDriver driver() {
    return driver;
  }

  /** Gives the page a size, as a phone or a large screen would. */
  public void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Asks for the light or the dark look. */
  public void look(String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  /** The element of an id. */
  public WebElement at(String id) {
    return driver.findElement(By.id(id));
  }

  /** What a script on the page gives back, as text. */
  public String ask(String script, Object... values) {
    return String.valueOf(driver.executeScript(script, values));
  }

  /**
   * Waits until the page has been drawn as it is now: scripts that fit it to its place have run.
   */
  public void drawn() {
    driver.executeAsyncScript(
        "const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => done()));");
  }

  /**
   * Waits until a script on the page gives back true.
   *
   * @param script a script that returns a truth value
   */
  public void await(String script) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!ask(script).equals("true")) {
      if (System.nanoTime() > end) {
        fail("not within " + PATIENCE.toMinutes() + " min: " + script + "; page says: " + text());
      }
      Thread.sleep(20);
    }
  }

  /** Everything that can be read on the page. */
  public String text() {
    return ask("return document.body.innerText");
  }

  /** What the accessibility rules of axe-core find on the page; empty text where nothing. */
  public String violations() throws IOException {
    return violations("");
  }

  /** The same of colours alone: what another theme changes. */
  public String violationsOfColours() throws IOException {
    return violations(", runOnly: ['color-contrast', 'link-in-text-block']");
  }

  private String violations(String only) throws IOException {
    try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
      driver.executeScript(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    // Without preload: it would ask for the style sheet anew, which a page from disk may not. What
    // is in order is not written down.
    return String.valueOf(
        driver.executeAsyncScript(
            "const done = arguments[0];"
                + "axe.run(document, {preload: false, resultTypes: ['violations'], selectors: false"
                + only
                + "}).then(r => done(r.violations.map(v => v.id + ': '"
                + " + v.nodes.length + ' ' + v.nodes[0].html.slice(0, 160) + ' '"
                + " + v.nodes[0].failureSummary.slice(0, 200)).join('\\n')));"));
  }

  /**
   * The words of each sheet that comes out of the printer.
   *
   * @param width of the paper, millimetres
   * @param height of the paper, millimetres
   * @param turned whether the page may turn a sheet sideways
   */
  public List<String> printed(double width, double height, boolean turned) throws IOException {
    Map<String, Object> pdf =
        driver.executeCdpCommand(
            "Page.printToPDF",
            Map.of(
                "preferCSSPageSize",
                turned,
                "paperWidth",
                width / INCH,
                "paperHeight",
                height / INCH));
    List<String> sheets = new ArrayList<>();
    byte[] file = Base64.getDecoder().decode(String.valueOf(pdf.get("data")));
    try (PDDocument document = Loader.loadPDF(file)) {
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        PDFTextStripper words = new PDFTextStripper();
        words.setStartPage(i);
        words.setEndPage(i);
        sheets.add(words.getText(document).replaceAll("(?U)\\s+", " ").strip());
      }
    }
    return sheets;
  }

  /** Errors and warnings on the console so far. */
  public List<String> consoleErrors() {
    for (LogEntry e : driver.manage().logs().get(LogType.BROWSER)) {
      if (e.getLevel().intValue() >= Level.WARNING.intValue()) {
        errors.add(e.getMessage());
      }
    }
    return List.copyOf(errors);
  }

  /** Addresses that pages asked for so far. */
  public List<String> requests() {
    for (LogEntry e : driver.manage().logs().get(LogType.PERFORMANCE)) {
      Map<String, Object> entry = new Json().toType(e.getMessage(), Json.MAP_TYPE);
      Map<?, ?> message = (Map<?, ?>) entry.get("message");
      if (message.get("method").equals("Network.requestWillBeSent")) {
        Map<?, ?> request = (Map<?, ?>) ((Map<?, ?>) message.get("params")).get("request");
        requests.add(String.valueOf(request.get("url")));
      }
    }
    return List.copyOf(requests);
  }

  /** Ends the browser as a crash would: its processes are killed, nothing is closed. */
  public void kill() {
    String ours = "--user-data-dir=" + started.profile();
    ProcessHandle.current()
        .descendants()
        .filter(p -> p.info().commandLine().orElse("").contains(ours))
        .forEach(ProcessHandle::destroyForcibly);
  }

  /** Addresses outside this machine that pages asked for so far. */
  private List<String> outside() {
    try {
      return requests().stream().filter(r -> !HERE.matcher(r).lookingAt()).toList();
    } catch (WebDriverException e) {
      return List.of();
    }
  }

  /** Gives the browser back; a page that asked anybody outside this machine fails the test. */
  @Override
  public void close() throws IOException {
    List<String> outside = outside();
    if (outside.isEmpty() && cleared()) {
      IDLE.add(started);
    } else {
      quit(started);
    }
    assertEquals(List.of(), outside, "asked outside this machine");
  }

  /** Closes the test's tabs and clears what its pages stored; false where the browser is gone. */
  private boolean cleared() {
    try {
      Set<String> origins = new TreeSet<>(List.of("file://"));
      for (String r : requests) {
        Matcher here = SERVED.matcher(r);
        if (here.lookingAt()) {
          origins.add(here.group());
        }
      }
      for (String origin : origins) {
        driver.executeCdpCommand(
            "Storage.clearDataForOrigin", Map.of("origin", origin, "storageTypes", "all"));
      }
      driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
      for (String tab : driver.getWindowHandles()) {
        if (!tab.equals(started.empty())) {
          driver.switchTo().window(tab).close();
        }
      }
      driver.switchTo().window(started.empty());
      driver.manage().logs().get(LogType.BROWSER);
      driver.manage().logs().get(LogType.PERFORMANCE);
      return true;
    } catch (WebDriverException e) {
      return false;
    }
  }

  private static void quit(Started browser) {
    try {
      browser.driver().quit();
    } catch (WebDriverException e) {
      System.err.println("The browser was gone already: " + e.getClass().getSimpleName());
    }
    try (Stream<Path> files = Files.walk(browser.profile())) {
      for (Path p : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(p);
      }
    } catch (IOException | java.io.UncheckedIOException e) {
      // A browser that was killed may still be letting go of its profile; the system clears it.
      System.err.println("A browser profile stays in the temporary folder: " + browser.profile());
    }
  }
}
