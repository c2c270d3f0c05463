package org.thalweg.api;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A CityJSON text laid open: its objects by id, and its corners in metres.
 *
 * <p>Two forms are read: a whole document, and one line of a CityJSONSeq file with the first line of that file beside it,
 * {@code {"metadata": …, "feature": …}}, because that line holds the transform. Versions 1.0, 1.1 and 2.0.
 *
 * @param objects  the city objects by id; an object
 * @param vertices the corners that faces name by place
 */
record CityModel(CityValue objects, CityVertices vertices) {

    private static final Pattern VERSION = Pattern.compile("(?:1\\.0|1\\.1|2\\.0)(?:\\.[0-9]{1,3})?");

    static CityModel read(CityValue posted) {
        posted.object("cityjson");
        CityValue feature = posted.member("feature");
        return feature.absent() ? document(posted) : feature(posted.member("metadata"), feature);
    }

    private static CityModel document(CityValue document) {
        if ("CityJSONFeature".equals(document.json().path("type").textValue())) {
            throw document.member("type")
                    .unreadable("A CityJSONFeature needs the first line of its file: send {\"metadata\": that line, "
                            + "\"feature\": this one}.");
        }
        checkHead(document);
        return of(document, document.member("transform"));
    }

    private static CityModel feature(CityValue firstLine, CityValue feature) {
        checkHead(firstLine.object("metadata"));
        mustBe("CityJSONFeature", feature.object("feature").member("type"));
        CityValue own = feature.member("transform");
        return of(feature, own.absent() ? firstLine.member("transform") : own);
    }

    private static CityModel of(CityValue holder, CityValue transform) {
        CityValue objects = holder.member("CityObjects").object("CityObjects");
        return new CityModel(objects, CityVertices.of(holder.member("vertices"), transform));
    }

    private static void checkHead(CityValue head) {
        mustBe("CityJSON", head.member("type"));
        CityValue version = head.member("version");
        if (!VERSION.matcher(version.text("version")).matches()) {
            throw version.unreadable("Only CityJSON 1.0, 1.1 and 2.0 are read.");
        }
        checkMetres(head.member("metadata"));
    }

    private static void mustBe(String name, CityValue type) {
        if (!type.text("type").equals(name)) {
            throw type.unreadable("type must be " + name + ".");
        }
    }

    private static void checkMetres(CityValue metadata) {
        if (metadata.absent()) {
            return;
        }
        CityValue system = metadata.object("metadata").member("referenceSystem");
        if (system.absent()) {
            return;
        }
        Optional<String> other = ReferenceSystem.notInMetres(system.text("referenceSystem"));
        if (other.isPresent()) {
            throw system.unreadable(
                    other.get() + " is in degrees, in feet or geocentric. Transform the file to a projected "
                            + "system in metres (the UTM zone of the place, or the national grid) and send it again.");
        }
    }
}
