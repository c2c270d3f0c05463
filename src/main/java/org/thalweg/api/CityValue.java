package org.thalweg.api;

import com.fasterxml.jackson.databind.JsonNode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;

/**
 * One value of a CityJSON document and where in the request it stands, so that whatever is wrong with it can be said in
 * one line.
 *
 * @param json the value; a missing node when the document has none
 * @param at   where it stands; for a missing value, where it is missed
 */
record CityValue(JsonNode json, Origin at) {

    /** The member {@code name}; absent, and standing here, when there is none. */
    CityValue member(String name) {
        JsonNode value = json.path(name);
        return new CityValue(value, value.isMissingNode() ? at : at.at(name));
    }

    /** Element {@code place} of a list, counted from 0; absent, and standing here, when there is none. */
    CityValue item(int place) {
        JsonNode value = json.path(place);
        return new CityValue(value, value.isMissingNode() ? at : at.at(place));
    }

    /** How many elements; 0 when absent. */
    int size() {
        return json.size();
    }

    /** Missing or null: the same to us. */
    boolean absent() {
        return json.isMissingNode() || json.isNull();
    }

    /** This value, which has to be an object. {@code what} names it to the caller. */
    CityValue object(String what) {
        return must(json.isObject(), what, "an object");
    }

    /** This value, which has to be a list. */
    CityValue list(String what) {
        return must(json.isArray(), what, "a list");
    }

    /** This value, which has to be a text. */
    String text(String what) {
        return must(json.isTextual(), what, "a text").json.textValue();
    }

    private CityValue must(boolean fits, String what, String form) {
        if (!fits) {
            throw unreadable(
                    absent() ? "%s is missing; it must be %s.".formatted(what, form) : what + " must be " + form + ".");
        }
        return this;
    }

    Refused unreadable(String detail) {
        return refused(RefusalCode.CITYJSON_UNREADABLE, detail);
    }

    Refused refused(RefusalCode code, String detail) {
        return new Refused(Refusal.of(code, at, detail));
    }
}
