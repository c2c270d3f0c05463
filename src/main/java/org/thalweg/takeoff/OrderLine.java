package org.thalweg.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.thalweg.reference.Metal;
import org.thalweg.units.Length;
import org.thalweg.units.Mass;

/**
 * One line of an order.
 *
 * @param item     what is ordered
 * @param made     what it is made of, where the layout knows
 * @param uses     what it is for; their amounts add up to the net quantity; never none
 * @param quantity how much
 * @param pieces   how many pieces that is, where it is cut in pieces
 * @param bars     what it is cut from, where it is cut from stock
 * @param packs    how many packs, where it is sold in packs
 * @param mass     of all that is ordered, where it is known
 */
public record OrderLine(
        OrderItem item,
        Optional<Made> made,
        List<Use> uses,
        Quantity quantity,
        OptionalLong pieces,
        List<SheetCut.Taken> bars,
        OptionalLong packs,
        Optional<Mass> mass) {

    public OrderLine {
        uses = List.copyOf(uses);
        bars = List.copyOf(bars);
    }

    /**
     * What metal goods are made of.
     *
     * @param metal     what it is
     * @param thickness how thick
     * @param width     of the flat sheet
     * @param profile   what the trade calls its shape, where several are made of such a sheet
     */
    public record Made(Metal metal, Length thickness, Length width, Optional<String> profile) {}

    /**
     * What part of a line is for.
     *
     * @param name   the id of a plane, the name of a valley, what a row holds down, the kind of an edge
     * @param amount of the net quantity: metres, square metres or pieces; 0 or more
     */
    public record Use(String name, double amount) {}
}
