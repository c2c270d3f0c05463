package org.thalweg.pricing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;

/**
 * What a takeoff costs. Every amount is rounded to the currency's minor unit, and every sum is the sum of them.
 *
 * @param lines    in the order of the takeoff
 * @param labour   in the order of the book
 * @param goods    sum of the lines
 * @param work     sum of the labour
 * @param subtotal of both
 * @param markups  in the order of the book
 * @param net      the subtotal and the mark-ups; nothing where a line has no price
 * @param taxes    in the order of the book; none where a line has no price
 * @param total    net and taxes; nothing where a line has no price
 * @param findings what has no price, and why
 */
public record Quote(
        List<GoodsCost> lines,
        List<LabourCost> labour,
        BigDecimal goods,
        BigDecimal work,
        BigDecimal subtotal,
        List<Share> markups,
        Optional<BigDecimal> net,
        List<Share> taxes,
        Optional<BigDecimal> total,
        List<Finding> findings) {

    public Quote {
        lines = List.copyOf(lines);
        labour = List.copyOf(labour);
        markups = List.copyOf(markups);
        taxes = List.copyOf(taxes);
        findings = List.copyOf(findings);
    }

    /**
     * An order line and what it costs.
     *
     * @param line  as the takeoff prints it
     * @param entry the book's, if one fits
     * @param cost  nothing where it has no price; a finding then says why
     */
    public record GoodsCost(PrintedLine line, Optional<BookItem> entry, Optional<Cost> cost) {}

    /**
     * Labour and what it costs.
     *
     * @param entry the book's
     * @param total what it is priced by, if the takeoff has it
     * @param cost  nothing where it has no price; a finding then says why
     */
    public record LabourCost(LabourItem entry, Optional<PrintedTotal> total, Optional<Cost> cost) {}

    /**
     * A quantity, priced.
     *
     * @param quantity what is paid for, in the unit of the price; whole packs where it comes in packs
     * @param packs    how many packs, where it comes in packs
     * @param price    per unit
     * @param amount   quantity times price, or the minimum
     * @param minimum  whether it is the minimum
     */
    public record Cost(
            Ratio quantity, Optional<BigDecimal> packs, BigDecimal price, BigDecimal amount, boolean minimum) {}

    /**
     * A mark-up or a tax.
     *
     * @param of     the book's
     * @param base   what it is a part of
     * @param amount how much it comes to
     */
    public record Share(Surcharge of, BigDecimal base, BigDecimal amount) {}

    /** Whether everything has a price, so that there is a total. */
    public boolean complete() {
        return total.isPresent();
    }
}
