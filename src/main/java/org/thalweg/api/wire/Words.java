package org.thalweg.api.wire;

import java.util.Locale;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;
import org.thalweg.units.TemperatureScale;

/** How the constants of the service's enums are written on the wire. */
public final class Words {

    private Words() {}

    /** A unit's symbol, an edge kind's own word, a letter as it is printed, else the name in camel case: {@code leastWaste}. */
    public static String of(Enum<?> constant) {
        if (constant instanceof LengthUnit length) {
            return length.symbol();
        }
        if (constant instanceof AreaUnit area) {
            return area.symbol();
        }
        if (constant instanceof MassUnit mass) {
            return mass.symbol();
        }
        if (constant instanceof TemperatureScale scale) {
            return scale.symbol();
        }
        if (constant instanceof FastenerKind fastener) {
            return fastener.wire();
        }
        if (constant instanceof WindForm.Exposure exposure) {
            return exposure.name();
        }
        return constant instanceof EdgeKind kind ? kind.wire() : camelCase(constant.name());
    }

    private static String camelCase(String name) {
        StringBuilder word = new StringBuilder();
        boolean up = false;
        for (char c : name.toLowerCase(Locale.ROOT).toCharArray()) {
            if (c == '_') {
                up = true;
            } else {
                word.append(up ? Character.toUpperCase(c) : c);
                up = false;
            }
        }
        return word.toString();
    }
}
