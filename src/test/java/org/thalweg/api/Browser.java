package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.TimeoutException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser without a window. It and its driver are those on the PATH; neither is ever downloaded. */
final class Browser implements AutoCloseable {

    private static final long USUAL_HEIGHT = 900;
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    private static final String MISSING = "no chromium and chromedriver on the PATH";
    private static final Pattern REFUSED =
            Pattern.compile("/v1/.* the server responded with a status of (400|406|422) ");

    /** It misses words for the newest browsers that nothing here needs. Kept, or its level is forgotten. */
    private static final Logger VERSIONS = Logger.getLogger("org.openqa.selenium.devtools.CdpVersionFinder");

    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Whether browser tests run. Where CI is said to be, they do, and fail for want of a browser. */
    static boolean wanted() {
        boolean wanted = (program().isPresent() && driver().isPresent()) || "true".equals(System.getenv("CI"));
        if (!wanted) {
            System.out.println("[WARNING] Browser tests skipped: " + MISSING);
        }
        return wanted;
    }

    static Browser start() {
        VERSIONS.setLevel(Level.SEVERE);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program().orElseThrow(() -> new AssertionError(MISSING)));
        options.addArguments("--headless=new", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run");
        if ("root".equals(System.getProperty("user.name"))) {
            options.addArguments("--no-sandbox");
        }
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(driver().orElseThrow(() -> new AssertionError(MISSING)))
                .usingAnyFreePort()
                .withSilent(true)
                .build();
        return new Browser(new ChromeDriver(service, options));
    }

    private static Optional<File> program() {
        return onPath("chromium", "chromium-browser", "google-chrome");
    }

    private static Optional<File> driver() {
        return onPath("chromedriver");
    }

    private static Optional<File> onPath(String... names) {
        String path = System.getenv().getOrDefault("PATH", "");
        return Stream.of(names)
                .flatMap(name -> Pattern.compile(File.pathSeparator, Pattern.LITERAL)
                        .splitAsStream(path)
                        .map(folder -> new File(folder, name)))
                .filter(File::canExecute)
                .findFirst();
    }

    void open(String address) {
        driver.get(address);
    }

    /** A screen of this width and taste. */
    void show(int width, String scheme) {
        size(width, USUAL_HEIGHT);
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    private void size(long width, long height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** In the page, or with a blank after a custom element's name, in its shadow: {@code thalweg-valley .status}. */
    WebElement find(String selector) {
        List<WebElement> found = all(selector);
        assertThat(found).as(selector).isNotEmpty();
        return found.get(0);
    }

    List<WebElement> all(String selector) {
        String host = "thalweg-valley ";
        return selector.startsWith(host)
                ? driver.findElement(By.cssSelector(host.strip()))
                        .getShadowRoot()
                        .findElements(By.cssSelector(selector.substring(host.length())))
                : driver.findElements(By.cssSelector(selector));
    }

    String text(String selector) {
        return find(selector).getText();
    }

    void click(String selector) {
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", find(selector));
        find(selector).click();
    }

    /** Types in the place of what stands there. */
    void type(String selector, String text) {
        WebElement field = find(selector);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
        if (!text.isEmpty()) {
            field.sendKeys(text);
        }
    }

    /** To whatever has the focus. */
    void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** Until it comes true; what did not is told with {@code what}. */
    void await(String what, Supplier<Boolean> truth) {
        new WebDriverWait(driver, PATIENCE)
                .pollingEvery(Duration.ofMillis(50))
                .ignoring(StaleElementReferenceException.class)
                .withMessage(what)
                .until(page -> truth.get());
    }

    void awaitText(String selector, String text) {
        try {
            await(selector, () -> text.equals(text(selector)));
        } catch (TimeoutException late) {
            assertThat(text(selector)).as(selector).isEqualTo(text);
        }
    }

    Object run(String script, Object... arguments) {
        return Objects.requireNonNullElse(driver.executeScript(script, arguments), "");
    }

    /** How many pixels the page is wider than the screen. */
    long overflow() {
        return (Long) run("return document.documentElement.scrollWidth - document.documentElement.clientWidth");
    }

    /** What the browser told its console, but for answers that were refused on purpose. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> !REFUSED.matcher(message).find())
                .toList();
    }

    /** What an accessibility engine calls serious or critical, in the page and in shadows. */
    List<String> barriers() {
        driver.executeScript(axe());
        Object found = driver.executeAsyncScript("const done = arguments[0];"
                + "axe.run(document, {resultTypes: ['violations']}).then(({violations, passes}) =>"
                + " done(JSON.stringify({violations, passes: passes.length})), e => done(String(e)))");
        JsonNode report = Door.json(String.valueOf(found));
        assertThat(report.path("passes").asInt())
                .as("rules that were looked at")
                .isGreaterThan(15);
        return report.path("violations").findParents("impact").stream()
                .filter(one -> one.has("help"))
                .filter(one -> List.of("serious", "critical")
                        .contains(one.path("impact").asText()))
                .map(one -> one.path("help").asText() + " " + one.path("nodes"))
                .toList();
    }

    private static String axe() {
        try (InputStream script = Browser.class.getResourceAsStream("/axe.min.js")) {
            return new String(Objects.requireNonNull(script).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The whole page on one tall screen, for people to look at. */
    void keep(String name) {
        long width = (Long) run("return window.innerWidth");
        size(width, (Long) run("return document.documentElement.scrollHeight"));
        byte[] image = driver.getScreenshotAs(OutputType.BYTES);
        size(width, USUAL_HEIGHT);
        try {
            Files.createDirectories(SCREENSHOTS);
            Files.write(SCREENSHOTS.resolve(name + ".png"), image);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }
}
