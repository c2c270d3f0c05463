package org.thalweg.pricing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/**
 * The goods of a price book, ready to be looked up. Of the entries that fit an order line the one that says most of it has
 * its price; of those that say as much, the one that gives the profile, then the width, then the thickness.
 *
 * <p>A thickness or width fits when the takeoff would print the book's just as it prints its own. So there is one index for each
 * length unit; two entries that no takeoff in some unit could tell apart clash, and which of them is meant nobody knows.
 */
public final class BookItems {

    private final List<BookItem> items;
    private final Map<LengthUnit, Map<String, List<Alike>>> byUnit = new EnumMap<>(LengthUnit.class);
    private final Map<BookItem, BookItem> clashes = new IdentityHashMap<>();

    private BookItems(List<BookItem> items) {
        this.items = List.copyOf(items);
    }

    public static BookItems of(List<BookItem> items) {
        BookItems book = new BookItems(items);
        for (LengthUnit unit : LengthUnit.values()) {
            book.byUnit.put(unit, book.index(unit));
        }
        return book;
    }

    /** Those that say what another before them says already; none in a good book. */
    public List<Clash> clashes() {
        List<Clash> found = new ArrayList<>();
        for (BookItem item : items) {
            BookItem before = clashes.get(item);
            if (before != null) {
                found.add(new Clash(before, item));
            }
        }
        return found;
    }

    /**
     * Two entries that say the same.
     *
     * @param first the one that stands first in the book
     * @param again the other
     */
    public record Clash(BookItem first, BookItem again) {}

    /** What is known of one line's goods. What is not said is null, or {@link #UNSAID}. */
    private record Goods(
            @Nullable String metal,
            long thickness,
            long width,
            @Nullable String profile) {}

    private static final long UNSAID = -1;

    /** Which members an entry says. They add up to a rank among those that say as many. */
    private static final int METAL = 1;

    private static final int THICKNESS = 2;
    private static final int WIDTH = 4;
    private static final int PROFILE = 8;

    /**
     * The entries for one item that say the same members.
     *
     * @param says    which
     * @param entries by what they say
     */
    private record Alike(int says, Map<Goods, BookItem> entries) {

        @Nullable
        BookItem find(PrintedLine.@Nullable Made made, LengthUnit unit) {
            if (says == 0) {
                return entries.get(NOTHING);
            }
            return made == null ? null : entries.get(said(made, unit));
        }

        private Goods said(PrintedLine.Made made, LengthUnit unit) {
            return new Goods(
                    (says & METAL) != 0 ? made.metal() : null,
                    (says & THICKNESS) != 0 ? lastPlaces(made.thickness(), unit) : UNSAID,
                    (says & WIDTH) != 0 ? lastPlaces(made.width(), unit) : UNSAID,
                    (says & PROFILE) != 0 ? made.profile().orElse(null) : null);
        }
    }

    private static final Goods NOTHING = new Goods(null, UNSAID, UNSAID, null);

    /** The entry an order line of a takeoff in {@code unit} has its price from; null when none fits. */
    @Nullable
    BookItem find(PrintedLine line, LengthUnit unit) {
        for (Alike alike : index(line.item(), unit)) {
            BookItem found = alike.find(line.made().orElse(null), unit);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private List<Alike> index(String item, LengthUnit unit) {
        Map<String, List<Alike>> index = byUnit.get(unit);
        List<Alike> alike = index == null ? null : index.get(item);
        return alike == null ? List.of() : alike;
    }

    private Map<String, List<Alike>> index(LengthUnit unit) {
        Map<String, TreeMap<Integer, Alike>> ranked = new HashMap<>();
        for (BookItem item : items) {
            int says = says(item.match());
            // More members first, then by their rank.
            int rank = -(Integer.bitCount(says) * 2 * PROFILE + says);
            BookItem before = ranked.computeIfAbsent(item.item(), key -> new TreeMap<>())
                    .computeIfAbsent(rank, key -> new Alike(says, new HashMap<>()))
                    .entries()
                    .putIfAbsent(goods(item.match(), unit), item);
            if (before != null) {
                clashes.putIfAbsent(item, before);
            }
        }
        Map<String, List<Alike>> index = new HashMap<>();
        ranked.forEach((item, alike) -> index.put(item, List.copyOf(alike.values())));
        return index;
    }

    private static int says(BookItem.Match match) {
        return (match.metal().isPresent() ? METAL : 0)
                + (match.thickness().isPresent() ? THICKNESS : 0)
                + (match.width().isPresent() ? WIDTH : 0)
                + (match.profile().isPresent() ? PROFILE : 0);
    }

    private static Goods goods(BookItem.Match match, LengthUnit unit) {
        return new Goods(
                match.metal().orElse(null),
                match.thickness().map(length -> lastPlaces(length, unit)).orElse(UNSAID),
                match.width().map(length -> lastPlaces(length, unit)).orElse(UNSAID),
                match.profile().orElse(null));
    }

    private static long lastPlaces(Length length, LengthUnit unit) {
        return lastPlaces(unit.round(length), unit);
    }

    /** A printed length as a whole number of its last place. */
    private static long lastPlaces(double printed, LengthUnit unit) {
        return Math.round(printed * PLACES[unit.decimals()]);
    }

    private static final double[] PLACES = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};
}
