package org.thalweg.api;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A supplier's site with the calculator on it, and on the same site stand-ins that answer as the service does on a bad day.
 * {@code localhost} and {@code 127.0.0.1} lead to it; to a browser those are two origins.
 */
final class Neighbour {

    /** The drawing of a stand-in, and what it must not lose on its way into the page. */
    static final String DRAWING =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 20\"><title>A valley</title>"
                    + "<desc>Drawn by a stand-in</desc><path d=\"M2 2l18 16L38 2\" fill=\"none\" stroke=\"#000\"/></svg>";

    private final HttpServer server;
    private final AtomicInteger busy = new AtomicInteger();
    private final CountDownLatch held = new CountDownLatch(1);
    private final CountDownLatch letGo = new CountDownLatch(1);
    private final CountDownLatch answeredLate = new CountDownLatch(1);

    Neighbour() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getByName("localhost"), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.setExecutor(Executors.newCachedThreadPool(Neighbour::inTheBackground));
        server.createContext("/busy/v1/valleys", this::busyOnce);
        server.createContext("/slow/v1/valleys", this::holdWhoRuns100);
        server.createContext("/lost/v1/valleys", exchange -> answer(exchange, 502, "text/html", "<p>Bad gateway</p>"));
        server.start();
    }

    private static Thread inTheBackground(Runnable work) {
        Thread thread = new Thread(work, "neighbour");
        thread.setDaemon(true);
        return thread;
    }

    int port() {
        return server.getAddress().getPort();
    }

    /** A page with the element, as strict as a page can be; its script comes from the service. */
    void publish(String path, String script, String attributes) {
        String page = "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>A shop</title>"
                + "<link rel=\"icon\" href=\"data:,\"><h1>A shop</h1><script src=\"" + script + "\" async></script>"
                + "<thalweg-valley " + attributes + "></thalweg-valley></html>";
        server.createContext(path, exchange -> {
            exchange.getResponseHeaders()
                    .add(
                            "Content-Security-Policy",
                            "default-src 'none'; script-src " + script + "; connect-src *; img-src data:");
            answer(exchange, 200, "text/html; charset=utf-8", page);
        });
    }

    /** Busy when first asked for figures, then the figures of the service. */
    private void busyOnce(HttpExchange exchange) throws IOException {
        if (busy.getAndIncrement() == 0) {
            exchange.getResponseHeaders().add("Retry-After", "1");
            answer(exchange, 503, "application/problem+json", "{\"errors\":[]}");
        } else {
            answer(exchange, 200, type(exchange), drawing(exchange));
        }
    }

    /** Keeps the answer to a run of 100 back until {@link #letGo}; all others pass it. */
    private void holdWhoRuns100(HttpExchange exchange) throws IOException {
        byte[] asked = exchange.getRequestBody().readAllBytes();
        boolean hold = new String(asked, StandardCharsets.UTF_8).contains("\"run\":100}");
        if (hold) {
            held.countDown();
            within10s(letGo);
        }
        try {
            answer(
                    exchange,
                    200,
                    "application/json",
                    Door.post("/v1/valleys", asked).text());
        } finally {
            if (hold) {
                answeredLate.countDown();
            }
        }
    }

    /** Until the run of 100 has been asked for. */
    void awaitHeld() {
        within10s(held);
    }

    /** Sends the answer to a run of 100, and waits until it has gone to whoever still listens. */
    void letGo() {
        letGo.countDown();
        within10s(answeredLate);
    }

    private static void within10s(CountDownLatch latch) {
        try {
            if (!latch.await(10, TimeUnit.SECONDS)) {
                throw new AssertionError("nothing came within 10 s");
            }
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static String type(HttpExchange exchange) {
        return exchange.getRequestHeaders().getFirst("Accept");
    }

    private static String drawing(HttpExchange exchange) throws IOException {
        byte[] asked = exchange.getRequestBody().readAllBytes();
        return Map.of("image/svg+xml", DRAWING)
                .getOrDefault(type(exchange), Door.post("/v1/valleys", asked).text());
    }

    private static void answer(HttpExchange exchange, int status, String type, String text) throws IOException {
        byte[] body = text.getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().add("Content-Type", type);
        exchange.sendResponseHeaders(status, body.length);
        exchange.getResponseBody().write(body);
        exchange.close();
    }
}
