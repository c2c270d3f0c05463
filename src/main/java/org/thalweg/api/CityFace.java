package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One flat face of a building, as its file has it.
 *
 * @param rings its rings of vertex places: the outer ring, then holes; not looked into yet
 * @param label what the file says the face is, an object with a {@code type}; empty when it says nothing
 */
record CityFace(CityValue rings, Optional<CityValue> label) {

    /** Whether the file says that this is roof. */
    boolean labelledRoof() {
        return label.isPresent()
                && label.get().member("type").text("A surface's type").equals("RoofSurface");
    }

    /**
     * The outer faces of one city object at its highest level of detail 2, in the order of the document. The shells of
     * voids inside a solid are left out.
     */
    static List<CityFace> of(CityValue object) {
        Optional<Geometry> best = Optional.empty();
        CityValue list = object.member("geometry");
        if (!list.absent()) {
            list.list("geometry");
            for (int i = 0; i < list.size(); i++) {
                Optional<Geometry> next = Geometry.of(list.item(i));
                if (next.isPresent() && (best.isEmpty() || next.get().betterThan(best.get()))) {
                    best = next;
                }
            }
        }
        return best.map(Geometry::faces).orElse(List.of());
    }

    /** The geometries that have faces, by how they nest them. */
    private enum Form {
        /** A list of faces. */
        SURFACES,
        /** A list of shells, the outer one first, each a list of faces. */
        SOLID,
        /** A list of solids. */
        SOLIDS;

        static Optional<Form> named(String type) {
            return Optional.ofNullable(
                    switch (type) {
                        case "MultiSurface", "CompositeSurface" -> SURFACES;
                        case "Solid" -> SOLID;
                        case "MultiSolid", "CompositeSolid" -> SOLIDS;
                        default -> null;
                    });
        }
    }

    /** One geometry of level of detail 2. */
    private record Geometry(Form form, String lod, CityValue value, CityValue surfaces) {

        private static final Pattern LOD_2 = Pattern.compile("2(?:\\.[0-9])?");

        /** Empty for points, lines and instances, which have no faces of their own, and for other levels of detail. */
        static Optional<Geometry> of(CityValue value) {
            value.object("A geometry");
            Optional<Form> form = Form.named(value.member("type").text("type"));
            if (form.isEmpty()) {
                return Optional.empty();
            }
            CityValue lod = value.member("lod");
            if (!lod.json().isTextual() && !lod.json().isNumber()) { // a number in version 1.0
                throw lod.unreadable("lod must be a text such as \"2\" or \"2.2\".");
            }
            String level = lod.json().asText();
            return LOD_2.matcher(level).matches()
                    ? Optional.of(new Geometry(form.get(), level, value, surfaces(value)))
                    : Optional.empty();
        }

        private static CityValue surfaces(CityValue geometry) {
            CityValue semantics = geometry.member("semantics");
            return semantics.absent()
                    ? semantics
                    : semantics.object("semantics").member("surfaces").list("surfaces");
        }

        /**
         * Whether to read this one rather than {@code other}: of the higher level; of the same level the labelled one; then a
         * solid, whose faces are known to look outward. Ties stay with the first.
         */
        boolean betterThan(Geometry other) {
            int higher = lod.compareTo(other.lod);
            if (higher != 0) {
                return higher > 0;
            }
            boolean labelled = surfaces.size() > 0;
            if (labelled != other.surfaces.size() > 0) {
                return labelled;
            }
            return form != Form.SURFACES && other.form == Form.SURFACES;
        }

        List<CityFace> faces() {
            List<CityFace> faces = new ArrayList<>();
            CityValue boundaries = value.member("boundaries").list("boundaries");
            CityValue values = value.member("semantics").member("values");
            switch (form) {
                case SURFACES -> addShell(boundaries, values, faces);
                case SOLID -> addSolid(boundaries, values, faces);
                case SOLIDS -> {
                    checkAlike(boundaries, values);
                    for (int i = 0; i < boundaries.size(); i++) {
                        addSolid(boundaries.item(i).list("A solid"), values.item(i), faces);
                    }
                }
            }
            return faces;
        }

        private void addSolid(CityValue shells, CityValue values, List<CityFace> faces) {
            checkAlike(shells, values);
            if (shells.size() > 0) {
                addShell(shells.item(0).list("A shell"), values.item(0), faces);
            }
        }

        private void addShell(CityValue shell, CityValue values, List<CityFace> faces) {
            checkAlike(shell, values);
            for (int i = 0; i < shell.size(); i++) {
                faces.add(new CityFace(shell.item(i), label(values.item(i))));
            }
        }

        /** Values are nested like boundaries; an absent list means that nothing in it is labelled. */
        private static void checkAlike(CityValue boundaries, CityValue values) {
            if (!values.absent()
                    && values.list("values, nested like boundaries,").size() != boundaries.size()) {
                throw values.unreadable("values must be nested like boundaries: " + boundaries.size() + " here, not "
                        + values.size() + ".");
            }
        }

        private Optional<CityValue> label(CityValue value) {
            if (value.absent()) {
                return Optional.empty();
            }
            if (!value.json().isIntegralNumber()
                    || !value.json().canConvertToInt()
                    || !surfaces.json().has(value.json().intValue())) {
                throw value.unreadable("A value must be null or the place of a surface, a whole number from 0 to below "
                        + surfaces.size() + ".");
            }
            return Optional.of(surfaces.item(value.json().intValue()).object("A surface"));
        }
    }
}
