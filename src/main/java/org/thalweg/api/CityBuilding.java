package org.thalweg.api;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.thalweg.finding.RefusalCode;

/** Picks one building out of a city: the object itself and the parts and installations that belong to it. */
final class CityBuilding {

    private static final Set<String> CHOOSABLE = Set.of("Building", "BuildingPart");
    private static final Set<String> BELONGING = Set.of("BuildingPart", "BuildingInstallation");

    /** How many ids a refusal names; enough to see what they look like. */
    private static final int NAMED = 5;

    /** Where a refusal cuts an id; ids have no longest length of their own. */
    private static final int LONGEST_NAMED = 60;

    private final CityValue cityObjects;
    private final List<CityValue> objects = new ArrayList<>();
    private final Set<String> taken = new HashSet<>();

    private CityBuilding(CityValue cityObjects) {
        this.cityObjects = cityObjects;
    }

    /**
     * The objects of one building: first itself, then each child followed by that child's own children.
     *
     * @param cityObjects all objects of the document, by id
     * @param chosen      id of a building or a building part; empty means the only building
     */
    static List<CityValue> objects(CityValue cityObjects, Optional<String> chosen) {
        CityBuilding building = new CityBuilding(cityObjects);
        building.take(chosen.isPresent() ? building.named(chosen.get()) : building.only());
        return building.objects;
    }

    private String named(String id) {
        if (!CHOOSABLE.contains(type(id))) {
            throw cityObjects.refused(
                    RefusalCode.CITYJSON_WHICH_BUILDING,
                    "No Building or BuildingPart has the id " + quoted(id) + ". " + choices(buildings()));
        }
        return id;
    }

    private String only() {
        List<String> buildings = buildings();
        if (buildings.size() != 1) {
            throw cityObjects.refused(
                    buildings.isEmpty() ? RefusalCode.CITYJSON_NO_ROOF : RefusalCode.CITYJSON_WHICH_BUILDING,
                    choices(buildings));
        }
        return buildings.get(0);
    }

    private List<String> buildings() {
        List<String> ids = new ArrayList<>();
        for (Iterator<String> names = cityObjects.json().fieldNames(); names.hasNext(); ) {
            String id = names.next();
            if ("Building".equals(type(id))) {
                ids.add(id);
            }
        }
        return ids;
    }

    private String type(String id) {
        String type = cityObjects.json().path(id).path("type").textValue();
        return type == null ? "" : type;
    }

    private void take(String root) {
        taken.add(root);
        Deque<CityValue> waiting = new ArrayDeque<>();
        waiting.push(cityObjects.member(root));
        while (!waiting.isEmpty()) {
            CityValue object = waiting.pop();
            objects.add(object);
            List<CityValue> children = children(object);
            for (int i = children.size() - 1; i >= 0; i--) {
                waiting.push(children.get(i));
            }
        }
    }

    private List<CityValue> children(CityValue object) {
        CityValue ids = object.member("children");
        List<CityValue> children = new ArrayList<>();
        if (ids.absent()) {
            return children;
        }
        ids.list("children");
        for (int i = 0; i < ids.size(); i++) {
            String id = ids.item(i).text("A child's id");
            if (!taken.add(id)) {
                throw ids.item(i)
                        .unreadable("This object is a child twice or its own ancestor. Children must form a tree.");
            }
            CityValue child = cityObjects.member(id);
            if (!child.json().isObject()) {
                throw ids.item(i).unreadable("CityObjects has no object " + quoted(id) + ".");
            }
            if (BELONGING.contains(type(id))) {
                children.add(child);
            }
        }
        return children;
    }

    private static String choices(List<String> buildings) {
        if (buildings.isEmpty()) {
            return "The document has no object of type Building.";
        }
        StringBuilder text = new StringBuilder("The document has ")
                .append(buildings.size())
                .append(buildings.size() == 1 ? " building: " : " buildings; choose one with building: ");
        for (int i = 0; i < Math.min(NAMED, buildings.size()); i++) {
            text.append(i == 0 ? "" : ", ").append(quoted(buildings.get(i)));
        }
        return text.append(buildings.size() > NAMED ? ", …." : ".").toString();
    }

    private static String quoted(String id) {
        return '"' + (id.length() > LONGEST_NAMED ? id.substring(0, LONGEST_NAMED) + "…" : id) + '"';
    }
}
