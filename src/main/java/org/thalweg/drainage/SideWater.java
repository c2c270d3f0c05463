package org.thalweg.drainage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.units.Area;
import org.thalweg.units.Flow;
import org.thalweg.units.Length;
import org.thalweg.units.Rainfall;

/**
 * The water of one side of a valley.
 *
 * @param left         whether the side lies left of the valley, seen looking up it
 * @param catchment    all that drains to it, seen from above
 * @param channel      where it runs; none where the plane does not fall to the valley
 * @param ribHeight    how high the rib stands on this side, square to the bed; none where no channel is
 * @param stations     in the order asked for, the valley's lower end first
 * @param reachesPanel the rainfall at which, at some station, the water spreads as far as it may; none when no rain does
 * @param reachesRib   the rainfall at which it stands as high as the rib; none when no rain does
 */
public record SideWater(
        boolean left,
        Catchment catchment,
        Optional<Channel> channel,
        Optional<Length> ribHeight,
        List<StationWater> stations,
        Optional<Rainfall> reachesPanel,
        Optional<Rainfall> reachesRib) {

    public SideWater {
        stations = List.copyOf(stations);
    }

    /**
     * @param side  which of the case's two sides
     * @param asked the valley
     */
    static SideWater of(int side, WaterCase asked) {
        WaterSide own = asked.sides().get(side);
        WaterSide other = asked.sides().get(1 - side);
        Optional<Channel> channel =
                Channel.of(own.flat(), other.flat(), asked.slope(), asked.roughness(), asked.tolerance());
        List<StationWater> stations = stations(own.catchment(), channel, asked);
        Optional<Length> ribHeight =
                channel.map(runs -> runs.ribHeight(asked.pan().ribLeg()));
        return new SideWater(
                own.left(),
                own.catchment(),
                channel,
                ribHeight,
                stations,
                channel.flatMap(runs -> reachesPanel(stations, runs, asked)),
                channel.flatMap(runs -> reaches(
                        runs.flow(ribHeight.orElseThrow()), stations.get(0).area(), asked)));
    }

    private static List<StationWater> stations(Catchment catchment, Optional<Channel> channel, WaterCase asked) {
        List<StationWater> stations = new ArrayList<>(asked.stations().size());
        for (Length along : asked.stations()) {
            Area area = catchment.planAreaAbove(along);
            double limit =
                    asked.pan().spreadLimit(along.metres() / asked.length().metres());
            Optional<Flow> flow = asked.rainfall().map(rain -> rain.on(area));
            Optional<Length> depth = channel.flatMap(runs -> flow.map(runs::depth));
            Optional<Length> spread = channel.flatMap(runs -> depth.map(runs::spread));
            stations.add(new StationWater(along, area, Length.metres(Math.max(0, limit)), flow, depth, spread));
        }
        return stations;
    }

    /** The least rain of all stations. */
    private static Optional<Rainfall> reachesPanel(List<StationWater> stations, Channel channel, WaterCase asked) {
        Optional<Rainfall> least = Optional.empty();
        for (StationWater station : stations) {
            Flow limit = channel.flow(channel.depthOfSpread(station.spreadLimit()));
            Optional<Rainfall> here = reaches(limit, station.area(), asked);
            if (here.isPresent() && (least.isEmpty() || here.get().compareTo(least.get()) < 0)) {
                least = here;
            }
        }
        return least;
    }

    /** The rain that brings a flow off an area; none when what drains is no larger than corners may stand apart. */
    private static Optional<Rainfall> reaches(Flow flow, Area area, WaterCase asked) {
        double nothing = asked.tolerance().metres() * asked.tolerance().metres();
        return area.squareMetres() > nothing ? Optional.of(Rainfall.of(flow, area)) : Optional.empty();
    }
}
