package org.thalweg.api;

import java.util.List;
import java.util.Optional;
import org.thalweg.drainage.Channel;
import org.thalweg.drainage.SideWater;
import org.thalweg.drainage.StationWater;
import org.thalweg.packet.LaidValley;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.Flow;
import org.thalweg.units.FlowUnit;
import org.thalweg.units.Length;
import org.thalweg.units.Rainfall;
import org.thalweg.units.Units;
import org.thalweg.valley.ValleySide;

/** The working of the water in a valley. Manning's formula is in metres and seconds, so its lines convert to and fro. */
final class WaterWorking {

    private static final String CONVEYANCE =
            "K = A₁^(5/3) / P₁^(2/3) √(sin θv) / n, A₁ = (cot ψ + tan λ) / 2," + " P₁ = 1 / sin ψ + 1 / cos λ; SI";

    private static final String MANNING =
            "Manning's formula, any hydraulics handbook; n: " + Channel.ROUGHNESS_SOURCE.text();

    private static final double SECONDS_AN_HOUR = 3600;

    private final WorkingSheet sheet;
    private final WorkingCase asked;
    private final LaidValley valley;
    private final Units units;
    private final String length;
    private final String metre;
    private final String squareMetre;

    WaterWorking(WorkingSheet sheet, WorkingCase asked, LaidValley valley) {
        this.sheet = sheet;
        this.asked = asked;
        this.valley = valley;
        this.units = sheet.units();
        this.length = sheet.length(valley.layout().edge().length());
        this.metre = sheet.number(units.length().of(1).metres());
        this.squareMetre = sheet.number(units.area().of(1).squareMetres());
    }

    void side(int i) {
        SideWater side = valley.water().sides().get(i);
        String at = "/drainage/sides/" + i;
        asked.corner()
                .ifPresent(corner ->
                        catchment(at, side, Length.ZERO, side.catchment().planArea()));
        side.channel().ifPresent(channel -> section(at, i, side, channel));
        for (int k = 0; k < side.stations().size(); k++) {
            station(at + "/stations/" + k, k, side);
        }
        side.channel().filter(WaterWorking::rises).ifPresent(channel -> limits(at, side, channel));
    }

    /** At a corner the fall lines that end above a place on the valley fill a triangle up to the level of its head. */
    private void catchment(String at, SideWater side, Length along, Area area) {
        if (side.channel().isEmpty()) {
            sheet.add(at + "/catchment", "0: the plane falls away from the valley", "0", area, WorkingSheet.GEOMETRY);
            return;
        }
        Angle plan = seen(side).seen().plan();
        double scale = units.area().of(1).squareMetres()
                / (units.length().of(1).metres() * units.length().of(1).metres());
        sheet.add(
                at + "/catchment",
                "((L − from) cos θv)² sin α cos α / 2, as square lengths; then in the unit of area",
                "((" + length + " - " + sheet.length(along) + ") * "
                        + sheet.cos(valley.layout().edge().edge().slope()) + ")^2 * " + sheet.sin(plan) + " * "
                        + sheet.cos(plan) + " / 2 / " + sheet.number(scale),
                area,
                WorkingSheet.GEOMETRY);
    }

    private ValleySide seen(SideWater side) {
        return side.left() ? valley.layout().left() : valley.layout().right();
    }

    private void section(String at, int i, SideWater side, Channel channel) {
        ValleySide own = seen(side);
        Angle slope = valley.layout().edge().edge().slope();
        sheet.add(
                at + "/panRiseDeg",
                "ψ = asin(cos φ sin θ / cos θv)",
                "asin(" + sheet.cos(own.seen().mitre()) + " * "
                        + sheet.sin(own.seen().pitch()) + " / " + sheet.cos(slope) + ")",
                channel.panRise(),
                WorkingSheet.GEOMETRY);
        sheet.add(
                at + "/ribHeight",
                "g cos λ, λ = (ψ − ψ′) / 2",
                sheet.length(valley.layout().spec().ribLeg()) + " * cos((" + sheet.degrees(channel.panRise()) + " - "
                        + sheet.degrees(AngleWorking.panRise(valley, 1 - i)) + ") / 2)",
                side.ribHeight().orElseThrow(),
                WorkingSheet.GEOMETRY);
    }

    private void station(String at, int k, SideWater side) {
        StationWater station = side.stations().get(k);
        if (asked.terms().stations().isEmpty() && k > 0) {
            sheet.add(
                    at + "/from",
                    "L · " + k + " / 4",
                    length + " * " + k + " / 4",
                    station.along(),
                    WorkingSheet.GEOMETRY);
        }
        asked.corner().ifPresent(corner -> catchment(at, side, station.along(), station.area()));
        spreadLimit(at, side, station);
        station.flow().ifPresent(flow -> flow(at, station, flow));
        side.channel().filter(WaterWorking::rises).ifPresent(channel -> depth(at, station, channel));
    }

    /** A flat that rises by rounding noise, as where the valley runs along the ribs, has no depth anyone could work out. */
    private static boolean rises(Channel channel) {
        return channel.panRise().roundedDegrees() > 0;
    }

    private void spreadLimit(String at, SideWater side, StationWater station) {
        ValleySide own = seen(side);
        String foot = "max(0, " + sheet.length(own.heldBack()) + ")";
        String head = "max(0, " + sheet.length(own.heldBackAtTop()) + ")";
        sheet.add(
                at + "/spreadLimit",
                "max(0, d + (d′ − d) from / L − margin), d and d′ 0 or more",
                "max(0, " + foot + " + (" + head + " - " + foot + ") * " + sheet.length(station.along()) + " / "
                        + length + " - " + sheet.length(asked.terms().margin()) + ")",
                station.spreadLimit(),
                WorkingSheet.GEOMETRY);
    }

    private void flow(String at, StationWater station, Flow flow) {
        Rainfall rain = asked.terms().rainfall().orElseThrow();
        double factor = units.flow().from(rainfall(1).on(units.area().of(1)));
        boolean gallons = units.flow() == FlowUnit.GALLON_PER_MINUTE;
        sheet.add(
                at + "/flow",
                "k i A, k: " + units.flow().symbol() + " that 1 " + Rainfall.symbol(units.length()) + " brings off 1 "
                        + units.area().symbol(),
                sheet.number(factor) + " * " + sheet.length(rain.inAnHour()) + " * " + sheet.area(station.area()),
                flow,
                WorkingSheet.GEOMETRY
                        + (gallons ? "; US gallon, 231 in³: NIST Special Publication 811, appendix B.8" : ""));
    }

    private Rainfall rainfall(double perHour) {
        return Rainfall.perHour(units.length().of(perHour));
    }

    private void depth(String at, StationWater station, Channel channel) {
        Optional<Flow> flow = station.flow();
        Optional<Length> depth = station.depth();
        if (flow.isEmpty() || depth.isEmpty()) {
            return;
        }
        double flowUnit = units.flow().of(1).cubicMetresPerSecond();
        sheet.add(
                at + "/depth",
                "(Q / K)^(3/8), " + CONVEYANCE,
                "(" + sheet.number(units.flow().from(flow.get())) + " * " + sheet.number(flowUnit) + " / ("
                        + conveyance(channel) + "))^(3 / 8) / " + metre,
                depth.get(),
                MANNING);
        station.spread()
                .ifPresent(spread -> sheet.add(
                        at + "/spread",
                        "y / sin ψ",
                        sheet.length(depth.get()) + " / " + sheet.sin(channel.panRise()),
                        spread,
                        WorkingSheet.GEOMETRY));
    }

    private String conveyance(Channel channel) {
        String rise = sheet.tan(channel.panRise());
        return "((1 / " + rise + " + " + sheet.tan(channel.ribLean()) + ") / 2)^(5 / 3) / (1 / "
                + sheet.sin(channel.panRise()) + " + 1 / " + sheet.cos(channel.ribLean()) + ")^(2 / 3) * sqrt("
                + sheet.sin(valley.layout().edge().edge().slope()) + ") / " + sheet.number(Channel.ROUGHNESS);
    }

    private void limits(String at, SideWater side, Channel channel) {
        side.reachesPanel().ifPresent(rain -> {
            StationWater first = first(side.stations(), channel, rain);
            sheet.add(
                    at + "/rainToPanels",
                    "K (spreadLimit sin ψ)^(8/3) / A, where it is least; " + CONVEYANCE,
                    rainFor(
                            channel,
                            sheet.length(first.spreadLimit()) + " * " + sheet.sin(channel.panRise()),
                            first.area()),
                    rain,
                    MANNING);
        });
        side.reachesRib()
                .ifPresent(rain -> sheet.add(
                        at + "/rainToRib",
                        "K ribHeight^(8/3) / A, at the foot; " + CONVEYANCE,
                        rainFor(
                                channel,
                                sheet.length(side.ribHeight().orElseThrow()),
                                side.stations().get(0).area()),
                        rain,
                        MANNING));
    }

    /** The rain under which water stands as deep as that, off an area, in an hour. */
    private String rainFor(Channel channel, String depth, Area area) {
        return conveyance(channel) + " * (" + depth + " * " + metre + ")^(8 / 3) / (" + sheet.area(area) + " * "
                + squareMetre + ") * " + sheet.number(SECONDS_AN_HOUR) + " / " + metre;
    }

    /** The station at which the least rain reaches the panels' margin. */
    private StationWater first(List<StationWater> stations, Channel channel, Rainfall least) {
        double nothing =
                asked.survey().tolerance().metres() * asked.survey().tolerance().metres();
        return stations.stream()
                .filter(station -> station.area().squareMetres() > nothing)
                .filter(station -> Rainfall.of(
                                channel.flow(channel.depthOfSpread(station.spreadLimit())), station.area())
                        .equals(least))
                .findFirst()
                .orElseThrow();
    }
}
