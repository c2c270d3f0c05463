package org.thalweg.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.roof.PlaneOutline;

/** Holds the place of the CityJSON reader, which is being written elsewhere. */
final class CityJsonReader {

    private CityJsonReader() {}

    static List<PlaneOutline> read(JsonNode cityjson, Optional<String> building, Origin at) {
        throw new Refused(Refusal.of(RefusalCode.CITYJSON_UNREADABLE, at, "CityJSON is not read yet."));
    }
}
