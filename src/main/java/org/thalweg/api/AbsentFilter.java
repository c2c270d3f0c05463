package org.thalweg.api;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;

/**
 * Writes into the contract that what is not there is left out: no answer holds {@code null}, so no schema allows it. And a
 * member that says which schema it has says no type of its own beside it, which could only contradict.
 */
@OpenApiFilter
public class AbsentFilter implements OASFilter {

    @Override
    public Schema filterSchema(Schema schema) {
        List<Schema> choices = schema.getAnyOf();
        if (choices != null && choices.size() == 2 && isNull(choices.get(1))) {
            schema.setRef(choices.get(0).getRef());
            schema.setAnyOf(null);
        }
        if (schema.getRef() != null) {
            schema.setType(null);
        } else if (schema.getType() != null && !isNull(schema)) {
            List<SchemaType> types = new ArrayList<>(schema.getType());
            types.remove(SchemaType.NULL);
            schema.setType(types);
        }
        return schema;
    }

    private static boolean isNull(Schema schema) {
        return List.of(SchemaType.NULL).equals(schema.getType());
    }
}
