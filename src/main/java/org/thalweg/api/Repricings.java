package org.thalweg.api;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import jakarta.inject.Singleton;
import jakarta.validation.Validation;
import java.util.Optional;
import org.thalweg.api.json.Posted;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.wire.RepricingSpans;
import org.thalweg.api.wire.RepricingStart;
import org.thalweg.finding.Origin;
import org.thalweg.pricing.PriceBook;

/** Prices saved jobs again, as many as there are: reads the price book once, and hands out workers that price line by line. */
@Singleton
public class Repricings {

    private static final Origin BOOK = Origin.REQUEST.at("priceBook");

    private final PostedReader reader;
    private final ObjectMapper mapper;
    private final Engine engine;

    public Repricings(PostedReader reader, ObjectMapper mapper, Engine engine) {
        this.reader = reader;
        this.mapper = mapper;
        this.engine = engine;
    }

    /** Prices without the framework, as it would. */
    public static Repricings alone() {
        ObjectMapper mapper = new ObjectMapper().registerModule(new Jdk8Module());
        new AnswerMapper().customize(mapper);
        return new Repricings(new PostedReader(Validation.buildDefaultValidatorFactory()), mapper, new Engine());
    }

    /** Who prices. */
    public String engine() {
        return engine.name();
    }

    /**
     * Reads the line that holds the price book.
     *
     * @throws NoAnswer when it can't be read
     */
    public RepricingBook book(byte[] line) {
        Posted<?> posted = reader.read(line, RepricingStart.class);
        RepricingStart start = (RepricingStart) posted.request();
        PriceBookReader.Read read = PriceBookReader.read(start.priceBook(), BOOK);
        read.faults().done();
        PriceBook book = read.book().orElseThrow();
        // What is told of a job is pointed at in its own line, where there is no book.
        PriceBook ofJobs = new PriceBook(
                book.currency(),
                book.waste(),
                book.items(),
                book.labour(),
                book.markups(),
                book.taxes(),
                Origin.REQUEST);
        return new RepricingBook(ofJobs, posted.digest());
    }

    /** Where the book and the jobs of a whole request stand in {@code body}. */
    RepricingSpans spans(byte[] body) {
        return (RepricingSpans) reader.bind(body, RepricingSpans.class);
    }

    /** A worker that prices jobs by {@code book} and tells the line of a job with a problem by its number. */
    public Repricer repricer(RepricingBook book) {
        return repricer(book, "line");
    }

    /** The same where what is told of the line is called {@code place}. */
    public Repricer repricer(RepricingBook book, String place) {
        return repricer(book, place, true);
    }

    /** One that takes no job the short way: the oracle of those that do. */
    Repricer strictRepricer(RepricingBook book) {
        return repricer(book, "line", false);
    }

    private Repricer repricer(RepricingBook book, String place, boolean quick) {
        return new Repricer(
                book.prices(),
                quick ? Optional.of(new PlainJobs(engine, book.prices())) : Optional.empty(),
                new JobReader(reader, engine, book.prices()),
                mapper,
                new AnswerLine(place));
    }
}
