package org.thalweg.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.panel.Panel;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.PanelSpec;
import org.thalweg.panel.PlanePanels;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Mass;

/**
 * The order and the totals of a panel layout.
 *
 * @param order         equal blanks counted, the longest first
 * @param roofArea      true area of all planes, openings left out
 * @param finishedArea  what the panels show
 * @param orderedLength all blanks end to end
 * @param orderedArea   all blanks, as wide as they cover
 * @param sheetArea     all blanks, as wide as their flat sheet
 * @param mass          of that sheet
 */
public record PanelTakeoff(
        List<BlankOrder> order,
        Area roofArea,
        Area finishedArea,
        Length orderedLength,
        Area orderedArea,
        Area sheetArea,
        Mass mass) {

    public PanelTakeoff {
        order = List.copyOf(order);
    }

    /** Counts a layout. */
    public static PanelTakeoff of(Roof roof, PanelLayout layout, PanelSpec spec, PanelSheet sheet) {
        List<Panel> panels = new ArrayList<>();
        double finished = 0;
        for (PlanePanels plane : layout.planes()) {
            panels.addAll(plane.panels());
            finished += plane.finishedArea().squareMetres();
        }
        double roofArea = roof.planes().stream()
                .map(Plane::area)
                .mapToDouble(Area::squareMetres)
                .sum();
        List<BlankOrder> order = order(panels, roof);
        double length =
                order.stream().mapToDouble(o -> o.length().metres() * o.count()).sum();
        Area sheetArea = new Area(length * sheet.girth().metres());
        return new PanelTakeoff(
                order,
                new Area(roofArea),
                new Area(finished),
                Length.metres(length),
                new Area(length * spec.cover().metres()),
                sheetArea,
                sheet.mass().of(sheetArea));
    }

    public int panelCount() {
        return order.stream().mapToInt(BlankOrder::count).sum();
    }

    /** Part of the ordered area that shows nowhere: off-cuts, hems, laps; 0 when nothing is ordered. */
    public double waste() {
        return orderedArea.squareMetres() > 0 ? 1 - finishedArea.squareMetres() / orderedArea.squareMetres() : 0;
    }

    private static List<BlankOrder> order(List<Panel> panels, Roof roof) {
        // A stable sort: equal lengths stay in the order of the layout.
        List<Panel> sorted = new ArrayList<>(panels);
        sorted.sort((one, other) -> other.blankLength().compareTo(one.blankLength()));
        List<BlankOrder> order = new ArrayList<>();
        int from = 0;
        for (int to = 1; to <= sorted.size(); to++) {
            if (to == sorted.size()
                    || !roof.tolerance()
                            .same(
                                    sorted.get(from).blankLength().metres(),
                                    sorted.get(to).blankLength().metres())) {
                order.add(new BlankOrder(
                        sorted.get(from).blankLength(),
                        sorted.subList(from, to).stream().map(Panel::mark).toList()));
                from = to;
            }
        }
        return order;
    }
}
